package leadlight.statistics;

/**
 * The Wilson score interval (Wilson 1927, Journal of the American Statistical Association 22:209)
 * of a sample whose size need not be whole, as an effective one is not.
 */
final class Wilson {

  /** The 0.975 quantile of the standard normal distribution. */
  static final double Z = 1.959963984540054;

  private Wilson() {}

  /** The 95 % interval of a share found in so many; 0 to 1 in none. */
  static Interval of(double share, double size) {
    if (size == 0) {
      return new Interval(0, 1);
    }
    double z2 = Z * Z / size;
    double centre = (share + z2 / 2) / (1 + z2);
    double half = Z * Math.sqrt(share * (1 - share) / size + z2 / size / 4) / (1 + z2);
    // At no event and at all the end is the share itself, but for rounding.
    double lower = share == 0 ? 0 : Math.max(0, centre - half);
    double upper = share == 1 ? 1 : Math.min(1, centre + half);
    return new Interval(lower, upper);
  }

  /** Two ends, both from 0 to 1. */
  record Interval(double lower, double upper) {}
}
