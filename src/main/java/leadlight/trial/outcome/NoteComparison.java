package leadlight.trial.outcome;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leadlight.model.PointPx;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.numeric.Quantiles;
import leadlight.trial.truth.RowNote;

/**
 * Sets what Leadlight said of a real photo beside a person's note of its row. A row is right if the
 * median distance of its leads from the noted middles, across the leads, is below 0.35 pitch. Along
 * the leads the notes are loose; there it is only told if most leads miss the noted ones
 * altogether. Notes count from the left with the body held above; a connector that counts from the
 * right is turned round.
 */
public final class NoteComparison {

  private NoteComparison() {}

  /**
   * Compares one photo.
   *
   * @param notHeld chance, by the opinions that count, that nothing holds a joint's lead
   * @param suspicion how suspect a joint is beside the others of its row
   */
  public static NoteOutcome of(
      RowNote note,
      ScoredPhoto scored,
      ToDoubleFunction<Joint> notHeld,
      ToDoubleFunction<GradedJoint> suspicion) {
    if (scored.row() instanceof RowOutcome.NotFound none) {
      return new NoteOutcome(
          note,
          RowResult.NOT_FOUND,
          Double.NaN,
          false,
          Opinion.code(none.reason()),
          List.of(),
          List.of(),
          List.of());
    }
    List<GradedJoint> joints = new ArrayList<>(scored.joints());
    if (scored.settings().row().pin1Reversed()) {
      Collections.reverse(joints);
    }
    double[] across = new double[note.leads()];
    int overlapping = 0;
    for (int i = 0; i < note.leads(); i++) {
      Lead lead = joints.get(i).joint().lead();
      double dx = middle(lead).x() - note.centresPx().get(i).x();
      double dy = middle(lead).y() - note.centresPx().get(i).y();
      double cos = Math.cos(note.angleRad());
      double sin = Math.sin(note.angleRad());
      across[i] = Math.abs(dx * cos + dy * sin) / note.pitchPx();
      double along = Math.abs(-dx * sin + dy * cos);
      double reach = note.halfLengthPx() + lead.toePx().distanceTo(lead.heelPx()) / 2;
      overlapping += along < reach ? 1 : 0;
    }
    double median = Quantiles.middle(across);
    return new NoteOutcome(
        note,
        median < Comparison.RIGHT_BELOW_OF_PITCH ? RowResult.RIGHT : RowResult.WRONG,
        median,
        2 * overlapping > note.leads(),
        "",
        joints.stream().mapToDouble(suspicion).boxed().toList(),
        joints.stream().map(GradedJoint::joint).mapToDouble(notHeld).boxed().toList(),
        joints);
  }

  private static PointPx middle(Lead lead) {
    return new PointPx(
        (lead.toePx().x() + lead.heelPx().x()) / 2, (lead.toePx().y() + lead.heelPx().y()) / 2);
  }
}
