package leadlight.quality.gauge;

import java.util.OptionalDouble;

/**
 * A limit that a gauge is asked to decide.
 *
 * @param measure which measure it is set for
 * @param productClass 1, 2 or 3; 0 for a tolerance of the user's own
 * @param lower lower limit; empty if there is none, then the measure starts at 0
 * @param value upper limit, in the measure's unit
 * @param source where it comes from
 */
public record ClassLimit(
    String measure, int productClass, OptionalDouble lower, double value, String source) {

  /** Refuses limits that leave nothing between them. */
  public ClassLimit {
    if (!(lower.orElse(0) < value)) {
      throw new IllegalArgumentException(lower.orElse(0) + " to " + value + " is no tolerance");
    }
  }

  /** An upper limit alone. */
  public ClassLimit(String measure, int productClass, double value, String source) {
    this(measure, productClass, OptionalDouble.empty(), value, source);
  }

  /** "class 2", "your tolerance". */
  public String name() {
    return productClass == 0 ? "your tolerance" : "class " + productClass;
  }

  /**
   * The share of the tolerance that the gauge takes (AIAG MSA, 4th edition: precision to
   * tolerance): six standard deviations of the gauge over the tolerance, or, where there is one
   * limit, three over the way from 0 to it.
   */
  public double share(double gaugeSd) {
    return lower.isPresent() ? 6 * gaugeSd / (value - lower.getAsDouble()) : 3 * gaugeSd / value;
  }

  /** How far a value is from the nearer limit. */
  public double distance(double at) {
    double up = Math.abs(value - at);
    return lower.isPresent() ? Math.min(up, Math.abs(at - lower.getAsDouble())) : up;
  }
}
