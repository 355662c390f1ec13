package leadlight.photo.jpeg;

import java.util.Arrays;

/** Middle and spread of values of which some lie far off. */
final class Spread {

  /** A normal distribution's standard deviation by its median distance from the median. */
  private static final double SIGMA_BY_MAD = 1.4826;

  private Spread() {}

  static double about(double[] values, double middle) {
    return SIGMA_BY_MAD * median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
  }

  static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int half = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
  }
}
