package leadlight.photo.jpeg;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/** Spread of values of which some lie far off. */
final class Spread {

  /** A normal distribution's standard deviation by its median distance from the median. */
  private static final double SIGMA_BY_MAD = 1.4826;

  private Spread() {}

  static double about(double[] values, double middle) {
    return SIGMA_BY_MAD
        * Quantiles.median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
  }
}
