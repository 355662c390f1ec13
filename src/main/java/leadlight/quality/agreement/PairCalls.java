package leadlight.quality.agreement;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadlight.quality.Estimate;
import leadlight.statistics.ClusterRate;

/**
 * What two graders called the same items, repeats pooled; a repeat is no item of its own.
 *
 * @param categories names of both sides' categories
 * @param items the items that both have graded
 */
public record PairCalls(List<String> categories, List<Item> items) {

  /**
   * An item.
   *
   * @param cluster the photo, board or item that it is counted with
   * @param counts flat, a line a category of the first grader: {@code size * first + second}
   */
  public record Item(String cluster, double[] counts) {}

  /** Copies. */
  public PairCalls {
    categories = List.copyOf(categories);
    items = List.copyOf(items);
  }

  /** All grades as one table. */
  public CrossTable table() {
    return table(Jackknife.total(items.stream().map(Item::counts).toList()));
  }

  private CrossTable table(double[] total) {
    int size = categories.size();
    List<List<Integer>> rows = new java.util.ArrayList<>();
    for (int i = 0; i < size; i++) {
      List<Integer> row = new java.util.ArrayList<>();
      for (int j = 0; j < size; j++) {
        row.add(total.length == 0 ? 0 : (int) total[size * i + j]);
      }
      rows.add(row);
    }
    return new CrossTable(categories, rows);
  }

  /** Cohen's kappa (Cohen 1960). */
  public Coefficient kappa() {
    return coefficient(total -> value(table(total).kappa()), true);
  }

  /** Weighted kappa (Cohen 1968). */
  public Coefficient weightedKappa(List<List<Double>> disagreement) {
    return coefficient(total -> value(table(total).weightedKappa(disagreement)), true);
  }

  /** Gwet's AC1 (Gwet 2008), over the categories that were used. */
  public Coefficient ac1() {
    double[] all = Jackknife.total(items.stream().map(Item::counts).toList());
    long used = java.util.stream.IntStream.range(0, size()).filter(j -> mean(all, j) > 0).count();
    return coefficient(total -> ac1(total, used), false);
  }

  private static OptionalDouble value(Optional<Estimate> estimate) {
    return estimate.isPresent()
        ? OptionalDouble.of(estimate.get().value())
        : OptionalDouble.empty();
  }

  private OptionalDouble ac1(double[] total, long used) {
    double n = java.util.Arrays.stream(total).sum();
    if (n == 0) {
      return OptionalDouble.empty();
    }
    double chance = 0;
    double observed = 0;
    for (int j = 0; j < size(); j++) {
      double share = mean(total, j) / n;
      chance += share * (1 - share) / Math.max(1, used - 1);
      observed += total[size() * j + j] / n;
    }
    return OptionalDouble.of((observed - chance) / (1 - chance));
  }

  /** Grades of a category, mean of both graders. */
  private double mean(double[] total, int category) {
    double sum = 0;
    for (int k = 0; total.length > 0 && k < size(); k++) {
      sum += total[size() * category + k] + total[size() * k + category];
    }
    return sum / 2;
  }

  private Coefficient coefficient(Function<double[], OptionalDouble> statistic, boolean needsRare) {
    Map<String, double[]> clusters = new LinkedHashMap<>();
    ClusterRate.Builder divided = new ClusterRate.Builder();
    for (Item item : items) {
      clusters.merge(item.cluster, item.counts, (a, b) -> Jackknife.total(List.of(a, b)));
      divided.add(item.cluster, same(item.counts) < java.util.Arrays.stream(item.counts).sum());
    }
    ClusterRate rate = divided.rate();
    IntervalNeeds needs = IntervalNeeds.BUILT_IN;
    boolean enough =
        rate.count() >= needs.leastDivided()
            && clusters.size() >= needs.leastClusters()
            && (!needsRare || rare() >= needs.leastRare());
    OptionalDouble value =
        items.isEmpty()
            ? OptionalDouble.empty()
            : statistic.apply(Jackknife.total(clusters.values()));
    return new Coefficient(
        value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty(),
        enough ? Jackknife.of(clusters.values(), statistic) : Optional.empty(),
        rate);
  }

  private double same(double[] counts) {
    double same = 0;
    for (int j = 0; j < size(); j++) {
      same += counts[size() * j + j];
    }
    return same;
  }

  /** Items that more than half of the grades put outside the commonest category. */
  private int rare() {
    double[] all = Jackknife.total(items.stream().map(Item::counts).toList());
    int commonest = 0;
    for (int j = 1; j < size(); j++) {
      commonest = mean(all, j) > mean(all, commonest) ? j : commonest;
    }
    int common = commonest;
    return (int)
        items.stream()
            .filter(
                item -> 2 * mean(item.counts, common) < java.util.Arrays.stream(item.counts).sum())
            .count();
  }

  private int size() {
    return categories.size();
  }
}
