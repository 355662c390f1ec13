package leadlight.model.joint;

import java.util.Optional;
import leadlight.model.Checks;
import leadlight.model.picture.Region;

/**
 * What the second reader says of one joint.
 *
 * @param chances its opinion on the solder
 * @param strangeness how unlike the joints that it learned from, 0 (like them) to 1
 * @param unlike true if it is too unlike them for the opinion to count
 * @param moved the part of the picture that its strongest call of a fault rests on; empty if it
 *     calls none
 */
public record Reading(Chances chances, double strangeness, boolean unlike, Optional<Region> moved) {

  /** Refuses a strangeness outside 0 to 1. */
  public Reading {
    Checks.within("strangeness", strangeness, 0, 1);
  }
}
