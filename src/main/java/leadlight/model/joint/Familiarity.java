package leadlight.model.joint;

import leadlight.model.Checks;

/**
 * Whether a photo is of a make on which telling soldered from set down was shown to work. That was
 * shown on rendered pictures; on photographs of a maker that was left out of learning it fails
 * (docs/truth.md).
 *
 * @param unfamiliar 0 (it is) to 1 (it is not)
 * @param byReader true if the second reader says so, false if the measures do
 */
public record Familiarity(double unfamiliar, boolean byReader) {

  /** Refuses a value outside 0 to 1. */
  public Familiarity {
    Checks.within("unfamiliar", unfamiliar, 0, 1);
  }
}
