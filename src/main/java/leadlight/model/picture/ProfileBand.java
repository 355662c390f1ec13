package leadlight.model.picture;

import leadlight.model.Checks;

/**
 * A stretch along a lead whose light counts in the judgement.
 *
 * @param id "lead-top", "slope" or "land-end"
 * @param fromPitch where it begins, pitches from the toe, positive over the land ahead of it
 * @param toPitch where it ends
 */
public record ProfileBand(String id, double fromPitch, double toPitch) {

  /** Refuses an end before the beginning. */
  public ProfileBand {
    Checks.finite("fromPitch", fromPitch);
    Checks.above("toPitch", toPitch, fromPitch);
  }
}
