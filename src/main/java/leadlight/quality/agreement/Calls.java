package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadlight.quality.Estimate;
import leadlight.statistics.ClusterRate;

/**
 * What several grades called each item; every item with the same number of grades, 2 or more.
 *
 * @param items the items
 */
public record Calls(List<Item> items) {

  /**
   * An item.
   *
   * @param cluster the photo, board or item that it is counted with
   * @param counts grades in each category
   */
  public record Item(String cluster, List<Integer> counts) {

    /** Copies. */
    public Item {
      counts = List.copyOf(counts);
    }

    int grades() {
      return counts.stream().mapToInt(Integer::intValue).sum();
    }

    boolean isDivided() {
      return counts.stream().filter(n -> n > 0).count() > 1;
    }
  }

  /** Refuses items with different numbers of grades. */
  public Calls {
    items = List.copyOf(items);
    if (items.stream().mapToInt(Item::grades).distinct().count() > 1
        || items.stream().anyMatch(item -> item.grades() < 2)) {
      throw new IllegalArgumentException("every item needs the same number of grades, 2 or more");
    }
  }

  /** Fleiss' kappa (Fleiss 1971, Psychological Bulletin 76:378). */
  public Coefficient kappa() {
    return coefficient(total -> kappa(total), true);
  }

  /**
   * Gwet's AC1 (Gwet 2008, British Journal of Mathematical and Statistical Psychology 61:29), over
   * the categories that were used.
   */
  public Coefficient ac1() {
    long used = used();
    return coefficient(total -> ac1(total, used), false);
  }

  private Coefficient coefficient(Function<double[], OptionalDouble> statistic, boolean needsRare) {
    Map<String, double[]> clusters = new LinkedHashMap<>();
    ClusterRate.Builder divided = new ClusterRate.Builder();
    for (Item item : items) {
      clusters.merge(item.cluster, sums(item), (a, b) -> Jackknife.total(List.of(a, b)));
      divided.add(item.cluster, item.isDivided());
    }
    OptionalDouble value = statistic.apply(Jackknife.total(clusters.values()));
    ClusterRate rate = divided.rate();
    IntervalNeeds needs = IntervalNeeds.BUILT_IN;
    boolean enough =
        rate.count() >= needs.leastDivided()
            && clusters.size() >= needs.leastClusters()
            && (!needsRare || rare() >= needs.leastRare());
    Optional<Estimate> interval =
        enough ? Jackknife.of(clusters.values(), statistic) : Optional.empty();
    return new Coefficient(
        value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty(), interval, rate);
  }

  /** Number of items, agreeing ordered pairs, then grades in each category. */
  private static double[] sums(Item item) {
    double[] sums = new double[2 + item.counts.size()];
    sums[0] = 1;
    for (int j = 0; j < item.counts.size(); j++) {
      int n = item.counts.get(j);
      sums[1] += (double) n * (n - 1);
      sums[2 + j] = n;
    }
    return sums;
  }

  private OptionalDouble kappa(double[] total) {
    double chance = 0;
    for (int j = 2; j < total.length; j++) {
      chance += share(total, j) * share(total, j);
    }
    return corrected(observed(total), chance, total);
  }

  private OptionalDouble ac1(double[] total, long used) {
    double chance = 0;
    for (int j = 2; j < total.length; j++) {
      chance += share(total, j) * (1 - share(total, j)) / Math.max(1, used - 1);
    }
    // One category only: all agree, and by this coefficient not by chance.
    return corrected(observed(total), chance, total);
  }

  private static OptionalDouble corrected(double observed, double chance, double[] total) {
    return total.length == 0 || total[0] == 0 || 1 - chance < 1e-12
        ? OptionalDouble.empty()
        : OptionalDouble.of((observed - chance) / (1 - chance));
  }

  private double observed(double[] total) {
    double grades = items.get(0).grades();
    return total[1] / total[0] / grades / (grades - 1);
  }

  private double share(double[] total, int j) {
    return total[j] / total[0] / items.get(0).grades();
  }

  private long used() {
    double[] total = Jackknife.total(items.stream().map(Calls::sums).toList());
    return java.util.Arrays.stream(total).skip(2).filter(n -> n > 0).count();
  }

  /** Items called other than the commonest category by more than half of their grades. */
  private int rare() {
    double[] total = Jackknife.total(items.stream().map(Calls::sums).toList());
    List<Double> shares = new ArrayList<>();
    java.util.Arrays.stream(total).skip(2).forEach(shares::add);
    int commonest = shares.indexOf(java.util.Collections.max(shares));
    return (int)
        items.stream()
            .filter(item -> 2 * (item.grades() - item.counts.get(commonest)) > item.grades())
            .count();
  }
}
