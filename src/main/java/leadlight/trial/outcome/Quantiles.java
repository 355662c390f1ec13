package leadlight.trial.outcome;

import java.util.Arrays;

/** Quantiles by linear interpolation between order statistics (Hyndman and Fan 1996, type 7). */
public final class Quantiles {

  private Quantiles() {}

  public static double median(double[] values) {
    return at(values, 0.5);
  }

  /** The quantile at p, 0 to 1; NaN of no values. */
  public static double at(double[] values, double p) {
    if (values.length == 0) {
      return Double.NaN;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    double place = p * (sorted.length - 1);
    int below = (int) Math.floor(place);
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
  }
}
