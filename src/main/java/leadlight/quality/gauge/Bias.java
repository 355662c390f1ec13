package leadlight.quality.gauge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.quality.Estimate;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Bias against known values, and linearity: whether the bias grows with the value (AIAG MSA, 4th
 * edition, III.B). Repeats of a part are no new part: intervals are by part.
 *
 * @param parts parts with a known value
 * @param mean mean over the parts of reading minus known value, with 95 % interval
 * @param p significance of the mean, two-sided t test
 * @param slope change of the bias a unit of the value, with 95 % interval; empty if fewer than
 *     three parts or all of one value
 */
public record Bias(int parts, Estimate mean, double p, Optional<Estimate> slope) {

  private static final double TAIL = 0.025;

  /** Whether chance alone would give as large a mean in fewer than one study in twenty. */
  boolean isMoreThanChance() {
    return p < 2 * TAIL;
  }

  /** Whether an interval leaves no room for none. */
  static boolean isBeyondNone(Estimate e) {
    return e.lower() > 0 || e.upper() < 0;
  }

  /** A reading of a part whose value is known. */
  public record Known(String part, double reference, double value) {}

  /** Computes both; empty for fewer than two parts. */
  public static Optional<Bias> of(List<Known> readings) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    for (Known r : readings) {
      double[] sum = sums.computeIfAbsent(r.part, part -> new double[3]);
      sum[0]++;
      sum[1] += r.reference;
      sum[2] += r.value - r.reference;
    }
    double[] x = sums.values().stream().mapToDouble(s -> s[1] / s[0]).toArray();
    double[] y = sums.values().stream().mapToDouble(s -> s[2] / s[0]).toArray();
    int n = x.length;
    if (n < 2) {
      return Optional.empty();
    }
    double mean = mean(y);
    double error = Math.sqrt(cross(y, y) / (n - 1) / n);
    double p = error > 0 ? p(mean / error, n - 1) : mean == 0 ? 1 : 0;
    return Optional.of(new Bias(n, interval(mean, error, n - 1), p, slope(x, y)));
  }

  private static Optional<Estimate> slope(double[] x, double[] y) {
    int free = x.length - 2;
    double xx = cross(x, x);
    if (free < 1 || !(xx > 0)) {
      return Optional.empty();
    }
    double slope = cross(x, y) / xx;
    double rest = Math.max(0, cross(y, y) - slope * cross(x, y));
    return Optional.of(interval(slope, Math.sqrt(rest / free / xx), free));
  }

  private static Estimate interval(double value, double error, int free) {
    double half = TDistribution.of(free).inverseSurvivalProbability(TAIL) * error;
    return new Estimate(value, value - half, value + half);
  }

  private static double p(double t, int free) {
    return 2 * TDistribution.of(free).survivalProbability(Math.abs(t));
  }

  private static double mean(double[] values) {
    return java.util.Arrays.stream(values).average().orElseThrow();
  }

  private static double cross(double[] a, double[] b) {
    double meanA = mean(a);
    double meanB = mean(b);
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += (a[i] - meanA) * (b[i] - meanB);
    }
    return sum;
  }
}
