package leadlight.pipeline;

import java.util.List;
import java.util.Optional;
import leadlight.joint.JointMeter;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.Joint;
import leadlight.model.picture.RowView;
import leadlight.model.row.RowOutcome;

/** A row with its joints as measured and read; without joints if none was found. */
record ReadRow(
    RowOutcome outcome,
    Optional<JointMeter.CutRow> cut,
    Optional<RowView> view,
    List<Joint> joints,
    Familiarity make) {

  /** No row: nothing to measure, nothing to read. */
  static ReadRow none(RowOutcome outcome) {
    return new ReadRow(
        outcome, Optional.empty(), Optional.empty(), List.of(), new Familiarity(1, false));
  }

  /** A row by its measures alone. */
  static ReadRow of(RowOutcome outcome, JointMeter.CutRow cut) {
    JointMeter.MeasuredRow row = cut.measured();
    return new ReadRow(
        outcome,
        Optional.of(cut),
        Optional.of(row.view()),
        row.joints(),
        new Familiarity(row.unfamiliar(), false));
  }
}
