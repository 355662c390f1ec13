package leadlight.record.said;

import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowOutcome;

/**
 * The row of a scoring.
 *
 * @param outcome where it is, or why there is none; what else was considered is not kept
 * @param joints pin 1 first; empty if there is no row
 */
public record RecordedRow(RowOutcome outcome, List<RecordedJoint> joints) {

  /** Copies the list. */
  public RecordedRow {
    joints = List.copyOf(joints);
  }

  /** The joints as they count: the bench over a named person over the tool. */
  public List<GradedJoint> standing() {
    return joints.stream().map(joint -> joint.standing().joint()).toList();
  }

  /** The worst of the joints as they count; unjudged if there is no row. */
  public Verdict verdict() {
    return joints.stream()
        .map(RecordedJoint::verdict)
        .reduce(Verdict::worse)
        .orElse(Verdict.UNJUDGED);
  }
}
