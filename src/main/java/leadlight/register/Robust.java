package leadlight.register;

/** Fits that what only one of two pictures shows does not lead astray. */
public final class Robust {

  /** Tukey's 4.685 spreads: 95 % efficiency for normal errors (Huber, Robust Statistics, 1981). */
  private static final double BIWEIGHT = 4.685;

  /** 1 / 0.6745: half of normal errors are less than 0.6745 spreads (Huber, as above). */
  private static final double FROM_MEDIAN = 1.4826;

  private Robust() {}

  /** Spread of normal errors from the median of their sizes. */
  public static double spread(double medianSize) {
    return FROM_MEDIAN * medianSize;
  }

  /** How much an observation counts, 1 to 0, by Tukey's biweight. */
  public static double weight(double error, double spread) {
    double q = error / (BIWEIGHT * spread);
    return Math.abs(q) < 1 ? (1 - q * q) * (1 - q * q) : 0;
  }
}
