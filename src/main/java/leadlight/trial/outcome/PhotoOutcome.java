package leadlight.trial.outcome;

import java.util.List;
import leadlight.trial.truth.PhotoTruth;

/**
 * One photo with truth: what Leadlight made of it.
 *
 * @param truth what is true
 * @param row what its row was worth
 * @param medianOfPitch median over the joints of the distance of reported and true toe (of a
 *     missing lead: of its land's end), over the pitch; NaN if no row was found
 * @param reason why no row was found, by code; empty if one was
 * @param joints truth beside opinion, pin 1 first; empty if no row was found
 */
public record PhotoOutcome(
    PhotoTruth truth,
    RowResult row,
    double medianOfPitch,
    String reason,
    List<JointOutcome> joints) {

  /** The same with another worth of its row. */
  public PhotoOutcome as(RowResult other) {
    return new PhotoOutcome(truth, other, medianOfPitch, reason, joints);
  }

  /** Copies the list. */
  public PhotoOutcome {
    joints = List.copyOf(joints);
  }
}
