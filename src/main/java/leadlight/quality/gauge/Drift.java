package leadlight.quality.gauge;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.quality.Estimate;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * A straight trend over days within parts: each part's own mean is taken off, then least squares
 * through what is left.
 *
 * @param perDay slope, unit of the readings a day, with 95 % interval
 * @param p significance, two-sided t test
 */
public record Drift(Estimate perDay, double p) {

  /**
   * A reading.
   *
   * @param day days from any origin
   */
  public record Dated(String part, double day, double value) {}

  /** The trend; empty if there is one day only, or too few readings to tell their scatter. */
  public static Optional<Drift> of(List<Dated> readings) {
    Map<String, double[]> sums = new LinkedHashMap<>();
    for (Dated r : readings) {
      double[] sum = sums.computeIfAbsent(r.part(), p -> new double[3]);
      sum[0]++;
      sum[1] += r.day();
      sum[2] += r.value();
    }
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (Dated r : readings) {
      double[] sum = sums.get(r.part());
      double x = r.day() - sum[1] / sum[0];
      double y = r.value() - sum[2] / sum[0];
      xx += x * x;
      xy += x * y;
      yy += y * y;
    }
    int free = readings.size() - sums.size() - 1;
    if (free < 1 || !(xx > 0)) {
      return Optional.empty();
    }
    return Optional.of(trend(xx, xy, yy, free));
  }

  private static Drift trend(double xx, double xy, double yy, int free) {
    double slope = xy / xx;
    double error = Math.sqrt(Math.max(0, yy - slope * xy) / free / xx);
    TDistribution t = TDistribution.of(free);
    double half = t.inverseSurvivalProbability(0.025) * error;
    double p = error > 0 ? 2 * t.survivalProbability(Math.abs(slope) / error) : slope == 0 ? 1 : 0;
    return new Drift(new Estimate(slope, slope - half, slope + half), p);
  }
}
