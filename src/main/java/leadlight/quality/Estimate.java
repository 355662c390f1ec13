package leadlight.quality;

import java.util.Optional;

/**
 * A figure with its 95 % interval.
 *
 * @param value the figure
 * @param lower lower end
 * @param upper upper end
 */
public record Estimate(double value, double lower, double upper) {

  /** The 0.975 quantile of the standard normal distribution. */
  static final double Z = 1.959963984540054;

  /** Refuses what is not finite. */
  public Estimate {
    if (!Double.isFinite(value) || !(lower <= value && value <= upper)) {
      throw new IllegalArgumentException(value + " with " + lower + " to " + upper);
    }
  }

  /** Value plus and minus 1.96 standard errors, cut to -1 to 1. */
  public static Estimate correlation(double value, double standardError) {
    double half = Z * standardError;
    return new Estimate(
        value, Math.max(-1, Math.min(value, value - half)), Math.min(1, value + half));
  }

  /** "0.86 (0.78 to 0.94)", or what is said where there is none. */
  static String words(Optional<Estimate> estimate) {
    return estimate
        .map(
            e ->
                "%s (%s to %s)"
                    .formatted(
                        Words.fixed(e.value, 2), Words.fixed(e.lower, 2), Words.fixed(e.upper, 2)))
        .orElse("not defined: one category only");
  }
}
