package leadlight.quality.agreement;

import java.util.Collection;
import java.util.OptionalDouble;
import java.util.function.Function;
import leadlight.quality.Estimate;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * The delete-a-group jackknife (Tukey 1958; Kott 2001, Journal of Official Statistics 17:521) of a
 * coefficient that is 1 at full agreement, on the scale log(1 - coefficient), with the t quantile
 * of one less than the groups: near 1 an interval on the plain scale would run beyond it.
 */
final class Jackknife {

  private static final double TAIL = 0.025;

  private Jackknife() {}

  /**
   * The interval.
   *
   * @param groups the sums of each photo, board or item; the statistic is of their total
   * @param statistic of a total; empty where it is not defined
   * @return empty if the statistic is not defined, is 1, or is so without a group
   */
  static java.util.Optional<Estimate> of(
      Collection<double[]> groups, Function<double[], OptionalDouble> statistic) {
    double[] total = total(groups);
    OptionalDouble value = statistic.apply(total);
    if (value.isEmpty() || value.getAsDouble() >= 1 || groups.size() < 2) {
      return java.util.Optional.empty();
    }
    double[] without = new double[groups.size()];
    int at = 0;
    for (double[] group : groups) {
      OptionalDouble one = statistic.apply(minus(total, group));
      if (one.isEmpty() || one.getAsDouble() >= 1) {
        return java.util.Optional.empty();
      }
      without[at++] = one.getAsDouble();
    }
    double distance = 1 - value.getAsDouble();
    double half =
        TDistribution.of(groups.size() - 1.0).inverseSurvivalProbability(TAIL)
            * error(without)
            / distance;
    return java.util.Optional.of(
        new Estimate(
            value.getAsDouble(),
            Math.max(-1, 1 - distance * Math.exp(half)),
            1 - distance * Math.exp(-half)));
  }

  /** Standard error from the values without each group. */
  static double error(double[] without) {
    int n = without.length;
    double mean = java.util.Arrays.stream(without).average().orElse(0);
    double squares = java.util.Arrays.stream(without).map(v -> (v - mean) * (v - mean)).sum();
    return Math.sqrt(squares * (n - 1) / n);
  }

  static double[] total(Collection<double[]> groups) {
    double[] total = new double[groups.stream().mapToInt(g -> g.length).max().orElse(0)];
    for (double[] group : groups) {
      for (int i = 0; i < group.length; i++) {
        total[i] += group[i];
      }
    }
    return total;
  }

  private static double[] minus(double[] total, double[] group) {
    double[] rest = total.clone();
    for (int i = 0; i < group.length; i++) {
      rest[i] -= group[i];
    }
    return rest;
  }
}
