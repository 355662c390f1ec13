package leadlight.record.book;

import java.util.Map;
import leadlight.data.JsonText;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.row.Lead;
import leadlight.text.Sentences;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Writes one joint of a scoring with its measures, opinions and findings. */
final class JointWriter {

  private final Handle handle;
  private final Sentences sentences = Sentences.english();

  JointWriter(Handle handle) {
    this.handle = handle;
  }

  void write(long scoring, GradedJoint graded, String name) {
    Lead lead = graded.joint().lead();
    long id =
        ScoringWriter.id(
            handle,
            "INSERT INTO joint (scoring_id, pin, name, verdict, unjudged_because, toe_x_px,"
                + " toe_y_px, heel_x_px, heel_y_px, land_toe_x_px, land_toe_y_px, land_heel_x_px,"
                + " land_heel_y_px, match, u_across_px, u_along_px, doubts, grounds, unfit)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            scoring,
            graded.pin(),
            name,
            graded.verdict().id(),
            graded.doubts().isEmpty() ? null : sentences.joined(graded.doubts()),
            lead.toePx().x(),
            lead.toePx().y(),
            lead.heelPx().x(),
            lead.heelPx().y(),
            lead.landToePx().x(),
            lead.landToePx().y(),
            lead.landHeelPx().x(),
            lead.landHeelPx().y(),
            lead.match(),
            lead.uAcrossPx(),
            lead.uAlongPx(),
            JsonText.of(graded.doubts()),
            JsonText.of(graded.grounds()),
            graded.joint().unfitBecause().map(JsonText::of).orElse(null));
    measures(id, graded.joint());
    new OpinionBook(handle).write(id, graded.joint());
    findings(id, graded);
  }

  private void measures(long joint, Joint measured) {
    if (measured.measures().isEmpty()) {
      return;
    }
    PreparedBatch batch =
        handle.prepareBatch("INSERT INTO measure (joint_id, name, value, u) VALUES (?, ?, ?, ?)");
    for (Map.Entry<Measure, Quantity> entry : measured.measures().entrySet()) {
      batch.add(joint, entry.getKey().id(), entry.getValue().value(), entry.getValue().u());
    }
    batch.execute();
  }

  private void findings(long joint, GradedJoint graded) {
    for (Finding finding : graded.findings()) {
      handle.execute(
          "INSERT INTO finding (joint_id, kind, pins, verdict, probability, evidence, clause,"
              + " settle_by, share, measured, reasons)"
              + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
          joint,
          finding.kind().id(),
          JsonText.of(finding.pins()),
          finding.verdict().id(),
          finding.probability(),
          sentences.evidence(finding),
          finding.clause(),
          finding.settleBy(),
          finding.share().isPresent() ? finding.share().getAsDouble() : null,
          finding.measured().map(JsonText::of).orElse(null),
          JsonText.of(finding.reasons()));
    }
  }
}
