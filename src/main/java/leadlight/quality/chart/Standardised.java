package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;

/** Charts for small lasting shifts, of groups in standard deviations from the centre. */
public final class Standardised {

  private Standardised() {}

  /**
   * A point.
   *
   * @param high cumulative sum or average upwards
   * @param low cumulative sum downwards, positive; or the same average
   * @param limit beyond it is a signal
   */
  public record Point(double high, double low, double limit) {

    /** Whether it is a signal. */
    public boolean isSignal() {
      return high > limit || low > limit;
    }
  }

  /** Tabular cumulative sums (Montgomery, Introduction to Statistical Quality Control, 9.1). */
  public static List<Point> cusum(List<Double> z, ChartRules.Cusum design) {
    List<Point> points = new ArrayList<>();
    double high = 0;
    double low = 0;
    for (double value : z) {
      high = Math.max(0, high + value - design.allowance());
      low = Math.max(0, low - value - design.allowance());
      points.add(new Point(high, low, design.decision()));
    }
    return points;
  }

  /** Moving average with its exact limits (Montgomery, 9.2). */
  public static List<Point> ewma(List<Double> z, ChartRules.Ewma design) {
    List<Point> points = new ArrayList<>();
    double weight = design.weight();
    double average = 0;
    for (int i = 0; i < z.size(); i++) {
      average = weight * z.get(i) + (1 - weight) * average;
      double spread = weight / (2 - weight) * (1 - Math.pow(1 - weight, 2 * (i + 1)));
      points.add(new Point(average, -average, design.width() * Math.sqrt(spread)));
    }
    return points;
  }
}
