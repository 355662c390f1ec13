package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A control chart of single values: centre and limits from a baseline, three standard deviations to
 * either side, these from the mean moving range (Shewhart; from memory: d2 of two is 1.128).
 *
 * @param name what is charted
 * @param labels of the values
 * @param values in the order in which they came
 * @param baseline so many values set the limits
 * @param limits none until the baseline is whole
 * @param signals values beyond the limits
 */
public record Individuals(
    String name,
    List<String> labels,
    List<Double> values,
    int baseline,
    Optional<Limits> limits,
    List<RunRules.Signal> signals) {

  private static final double D2 = 1.128;
  private static final double LIMIT_SIGMA = 3;

  /** The one rule that is asked: with several figures a day the others cry wolf too often. */
  private static final int BEYOND = 1;

  /** Copies the lists. */
  public Individuals {
    labels = List.copyOf(labels);
    values = List.copyOf(values);
    signals = List.copyOf(signals);
  }

  /**
   * Centre and standard deviation.
   *
   * @param centre mean of the baseline
   * @param sigma its mean moving range over d2; 0 if it does not vary: then any other value is
   *     beyond
   */
  public record Limits(double centre, double sigma) {

    private double z(double value) {
      return value == centre ? 0 : (value - centre) / sigma;
    }

    /** The lower limit. */
    public double lower() {
      return centre - LIMIT_SIGMA * sigma;
    }

    /** The upper limit. */
    public double upper() {
      return centre + LIMIT_SIGMA * sigma;
    }
  }

  /**
   * Charts values.
   *
   * @param highOnly true if small values are no trouble, as of a distance
   */
  public static Individuals of(
      String name, List<String> labels, List<Double> values, int baseline, boolean highOnly) {
    Optional<Limits> limits =
        values.size() < baseline ? Optional.empty() : limits(values.subList(0, baseline));
    List<Double> z = new ArrayList<>();
    limits.ifPresent(it -> values.forEach(value -> z.add(it.z(value))));
    List<RunRules.Signal> signals =
        RunRules.of(z, Set.of(BEYOND)).stream().filter(it -> it.high() || !highOnly).toList();
    return new Individuals(name, labels, values, baseline, limits, signals);
  }

  private static Optional<Limits> limits(List<Double> first) {
    double ranges = 0;
    for (int i = 1; i < first.size(); i++) {
      ranges += Math.abs(first.get(i) - first.get(i - 1));
    }
    if (first.size() < 2) {
      return Optional.empty();
    }
    double mean = first.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
    // The mean of like values is not always that value to the last bit.
    return Optional.of(
        ranges == 0
            ? new Limits(first.get(0), 0)
            : new Limits(mean, ranges / (first.size() - 1) / D2));
  }

  /** The rules that values from a place on meet, each with the value's label. */
  public List<String> since(int index) {
    return signals.stream()
        .filter(it -> it.index() >= index)
        .map(it -> it.rule() + " at " + labels.get(it.index()))
        .distinct()
        .toList();
  }
}
