package leadlight.model;

/**
 * A measured value with its standard uncertainty (JCGM 100:2008, 2.3.1).
 *
 * @param value the estimate, in {@code unit}
 * @param u standard uncertainty, same unit, zero or more
 * @param unit the unit of both
 */
public record Quantity(double value, double u, Unit unit) {

  /** Refuses a value that is not finite and a negative uncertainty. */
  public Quantity {
    Checks.finite("value", value);
    Checks.atLeast("u", u, 0);
  }
}
