package leadlight.numeric;

import java.util.Arrays;

/** Quantiles of short arrays; the values stay in their order. */
public final class Quantiles {

  private Quantiles() {}

  /**
   * By linear interpolation between order statistics (Hyndman and Fan 1996, type 7); NaN of no
   * values.
   *
   * @param share 0 to 1
   */
  public static double of(double[] values, double share) {
    if (values.length == 0) {
      return Double.NaN;
    }
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return ofSorted(sorted, share);
  }

  /** The same of values in ascending order, at least one. */
  public static double ofSorted(double[] sorted, double share) {
    double at = share * (sorted.length - 1);
    int below = (int) at;
    int above = Math.min(below + 1, sorted.length - 1);
    return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
  }

  /** The median by that interpolation; {@link #median} may differ from it in the last bit. */
  public static double middle(double[] values) {
    return of(values, 0.5);
  }

  /** The median: the mean of the two middle values, or the middle one; 0 of no values. */
  public static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n == 0 ? 0 : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
  }
}
