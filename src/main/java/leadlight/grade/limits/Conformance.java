package leadlight.grade.limits;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Whether a measured value keeps a limit, by its uncertainty: the value is taken as normally
 * distributed about the estimate (JCGM 106:2012, 7.2 and 8.3; ISO 14253-1:2017). Exact for that
 * model.
 */
public final class Conformance {

  /** What is proven at a level of confidence. */
  public enum Zone {
    /** The limit is kept. */
    KEPT,
    /** Neither is proven. */
    NEITHER,
    /** The limit is passed. */
    PASSED
  }

  private Conformance() {}

  /**
   * Probability that the true value keeps the limit.
   *
   * @param value estimate, in the limit's unit
   * @param u standard uncertainty, same unit; with 0 the answer is 0 or 1, a value at the limit
   *     keeps it
   * @throws IllegalArgumentException if the value is not finite or u is negative
   */
  public static double probability(double value, double u, double limit, Bound bound) {
    if (!Double.isFinite(value) || !Double.isFinite(limit) || !(u >= 0 && u < Double.MAX_VALUE)) {
      throw new IllegalArgumentException(
          "value " + value + " with u " + u + " against " + limit + " cannot be decided");
    }
    double inside = bound == Bound.UPPER ? limit - value : value - limit;
    if (u == 0) {
      return inside >= 0 ? 1 : 0;
    }
    return NormalDistribution.of(0, u).cumulativeProbability(inside);
  }

  /**
   * What the probability of keeping a limit proves.
   *
   * @param probability from {@link #probability}
   * @param level 0.95 puts a guard band of 1.645 u on either side of the limit
   */
  public static Zone zone(double probability, double level) {
    if (probability >= level) {
      return Zone.KEPT;
    }
    return 1 - probability >= level ? Zone.PASSED : Zone.NEITHER;
  }
}
