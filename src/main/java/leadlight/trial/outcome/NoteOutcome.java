package leadlight.trial.outcome;

import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.trial.truth.RowNote;

/**
 * One real photo: what Leadlight made of its row.
 *
 * @param note what a person noted
 * @param row what the row was worth
 * @param medianOfPitch median distance across the leads over the pitch; NaN if no row was found
 * @param overlaps whether most leads overlap the noted ones lengthwise
 * @param reason why no row was found, by code; empty if one was
 * @param suspicions how suspect each joint is beside the others of its row; in the order of the
 *     note
 * @param notHeld chance, by the opinions that count, that a joint has no lead or no fillet;
 *     likewise
 * @param joints what was said of each joint, in the order of the note; empty if no row was found
 */
public record NoteOutcome(
    RowNote note,
    RowResult row,
    double medianOfPitch,
    boolean overlaps,
    String reason,
    List<Double> suspicions,
    List<Double> notHeld,
    List<GradedJoint> joints) {

  /** Copies the lists. */
  public NoteOutcome {
    suspicions = List.copyOf(suspicions);
    notHeld = List.copyOf(notHeld);
    joints = List.copyOf(joints);
  }

  /** What was said of each joint, in a word; in the order of the note. */
  public List<Verdict> verdicts() {
    return joints.stream().map(GradedJoint::verdict).toList();
  }
}
