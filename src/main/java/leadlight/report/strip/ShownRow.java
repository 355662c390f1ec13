package leadlight.report.strip;

import java.util.List;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;

/**
 * One row to be shown among others.
 *
 * @param title what it is, as "after rework, port.jpg"
 * @param spec the row that was looked for
 * @param found where it is
 * @param joints its joints, pin 1 first
 * @param picture the upright photo; stays open
 */
public record ShownRow(
    String title, RowSpec spec, RowOutcome.Found found, List<GradedJoint> joints, Frame picture) {}
