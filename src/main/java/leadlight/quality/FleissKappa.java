package leadlight.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Agreement of many graders, the same number an item: Fleiss 1971, Psychological Bulletin 76:378.
 * The interval is by the jackknife over items (leave one out, 1.96 standard errors).
 *
 * @param observed mean agreement of two grades of an item
 * @param byChance agreement of grades drawn from all items
 * @param kappa chance-corrected; empty if all grades are of one category
 */
public record FleissKappa(double observed, double byChance, Optional<Estimate> kappa) {

  /**
   * Computes it.
   *
   * @param counts an item a line: grades in each category; all lines have the same sum, 2 or more
   * @return empty without items
   */
  public static Optional<FleissKappa> of(List<List<Integer>> counts) {
    if (counts.isEmpty()) {
      return Optional.empty();
    }
    int graders = sum(counts.get(0));
    if (graders < 2 || counts.stream().anyMatch(c -> sum(c) != graders)) {
      throw new IllegalArgumentException("every item needs the same number of grades, 2 or more");
    }
    double observed = observed(counts, graders);
    double chance = chance(counts, graders);
    if (1 - chance < 1e-12) {
      return Optional.of(new FleissKappa(observed, chance, Optional.empty()));
    }
    double kappa = (observed - chance) / (1 - chance);
    double error = jackknife(counts, graders);
    return Optional.of(
        new FleissKappa(observed, chance, Optional.of(Estimate.correlation(kappa, error))));
  }

  private static int sum(List<Integer> counts) {
    return counts.stream().mapToInt(Integer::intValue).sum();
  }

  private static double observed(List<List<Integer>> counts, int graders) {
    double pairs = 0;
    for (List<Integer> item : counts) {
      for (int n : item) {
        pairs += (double) n * (n - 1);
      }
    }
    return pairs / counts.size() / graders / (graders - 1);
  }

  private static double chance(List<List<Integer>> counts, int graders) {
    double chance = 0;
    for (int j = 0; j < counts.get(0).size(); j++) {
      int category = j;
      double share =
          counts.stream().mapToInt(c -> c.get(category)).sum() / (double) counts.size() / graders;
      chance += share * share;
    }
    return chance;
  }

  private static double jackknife(List<List<Integer>> counts, int graders) {
    int n = counts.size();
    List<Double> without = new ArrayList<>();
    for (int i = 0; n > 1 && i < n; i++) {
      List<List<Integer>> rest = new ArrayList<>(counts);
      rest.remove(i);
      double chance = chance(rest, graders);
      // Leaving out the only dissenter leaves one category, in which all agree.
      without.add(1 - chance < 1e-12 ? 1 : (observed(rest, graders) - chance) / (1 - chance));
    }
    double mean = without.stream().mapToDouble(k -> k).average().orElse(0);
    double square = without.stream().mapToDouble(k -> (k - mean) * (k - mean)).sum();
    return Math.sqrt(square * (n - 1) / n);
  }
}
