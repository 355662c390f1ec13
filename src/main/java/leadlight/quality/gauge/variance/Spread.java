package leadlight.quality.gauge.variance;

import java.util.Optional;

/**
 * Standard deviations of a gauge study, in the unit of the readings.
 *
 * @param equipment repeatability: the same part, operator and set-up again
 * @param operators reproducibility, with the interaction of part and operator
 * @param parts part to part
 */
public record Spread(double equipment, double operators, double parts) {

  /** Of 6 PV / 4.24 GRR: 1.41, the square root of 2 (AIAG MSA). */
  private static final double CATEGORIES = 1.41;

  /** Refuses what is not a standard deviation. */
  public Spread {
    if (!(equipment >= 0 && operators >= 0 && parts >= 0)) {
      throw new IllegalArgumentException(equipment + ", " + operators + ", " + parts);
    }
  }

  /** Repeatability and reproducibility together. */
  public double gauge() {
    return Math.hypot(equipment, operators);
  }

  /** All together. */
  public double total() {
    return Math.hypot(gauge(), parts);
  }

  /** Share of the total variation that the gauge takes; empty if nothing varies. */
  public Optional<Double> gaugeShare() {
    return total() > 0 ? Optional.of(gauge() / total()) : Optional.empty();
  }

  /** Distinct categories of parts that the gauge tells; empty if the gauge does not vary. */
  public Optional<Integer> categories() {
    return gauge() > 0
        ? Optional.of((int) Math.min(Integer.MAX_VALUE, CATEGORIES * parts / gauge()))
        : Optional.empty();
  }
}
