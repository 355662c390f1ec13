package leadlight.record;

import java.util.List;
import leadlight.model.RowOutcome;

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
}
