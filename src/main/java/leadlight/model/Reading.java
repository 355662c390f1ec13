package leadlight.model;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the second reader says of one joint.
 *
 * @param chances its opinion on the solder
 * @param strangeness how unlike the joints that it learned from, 0 (like them) to 1
 * @param unlike true if it is too unlike them for the opinion to count
 * @param photographed 0 if the picture looks drawn or path-traced, as all faults do that the
 *     reader's figures rest on, to 1 if it looks photographed: there its opinion was never shown to
 *     hold (models/reader/README.md). Of one joint it is weak; its mean over a row is meant; empty
 *     where a record kept none
 * @param moved the part of the picture that its strongest call of a fault rests on; empty if it
 *     calls none
 */
public record Reading(
    FaultChances chances,
    double strangeness,
    boolean unlike,
    OptionalDouble photographed,
    Optional<Region> moved) {

  /** Refuses a strangeness or a look outside 0 to 1. */
  public Reading {
    Checks.within("strangeness", strangeness, 0, 1);
    photographed.ifPresent(chance -> Checks.within("photographed", chance, 0, 1));
  }
}
