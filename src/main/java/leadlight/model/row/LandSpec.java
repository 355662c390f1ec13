package leadlight.model.row;

import java.util.OptionalDouble;
import leadlight.model.Checks;

/**
 * One land of a row as the connector has it.
 *
 * @param pin place in the row, 1 to N
 * @param name pin name for people, as "A1/B12"; the pin number where the part has no names
 * @param uMm place of the land's middle along the row, millimetres from pin 1
 * @param widthMm land width across the lead, if known
 * @param lengthMm land length along the lead, if known
 */
public record LandSpec(
    int pin, String name, double uMm, OptionalDouble widthMm, OptionalDouble lengthMm) {

  /** Refuses a pin below 1 and a place that is not finite. */
  public LandSpec {
    Checks.atLeast("pin", pin, 1);
    Checks.finite("uMm", uMm);
  }
}
