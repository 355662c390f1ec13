package leadlight.joint.place;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.cut.JointPatch;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;

/**
 * Moves leads to where {@link LeadPlacer} found them, where that is clearly elsewhere than the row
 * has them; the others keep the row's finer place.
 */
final class LeadMover {

  /**
   * A place that differs by less is left as it is: both are good to a few hundredths of a pitch.
   */
  private static final double LEAST_MOVE = 0.06;

  /** Scores scatter; a move must gain at least this, tuned on benchmark/more. */
  private static final double LEAST_GAIN = 0.12;

  /** Standard uncertainty across the lead of a moved toe, pitches; measured on benchmark/more. */
  private static final double MOVED_U = 0.03;

  private LeadMover() {}

  static List<Lead> moved(List<JointPatch> joints, List<LeadPlacer.Placed> places) {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      leads.add(moved(joints.get(i), places.get(i)));
    }
    return leads;
  }

  private static Lead moved(JointPatch joint, LeadPlacer.Placed place) {
    double toeMove = place.toe() - joint.offset();
    double heelMove = place.heel() - joint.heelOffset();
    boolean elsewhere = Math.max(Math.abs(toeMove), Math.abs(heelMove)) >= LEAST_MOVE;
    if (!elsewhere || place.gain() < LEAST_GAIN) {
      return joint.lead();
    }
    Lead lead = joint.lead();
    return new Lead(
        lead.pin(),
        shifted(lead.toePx(), joint, toeMove),
        shifted(lead.heelPx(), joint, heelMove),
        lead.landToePx(),
        lead.landHeelPx(),
        lead.match(),
        Math.max(lead.uAcrossPx(), MOVED_U * joint.pitchPx()),
        lead.uAlongPx());
  }

  private static PointPx shifted(PointPx from, JointPatch joint, double pitches) {
    return new PointPx(from.x() + joint.acrossX() * pitches, from.y() + joint.acrossY() * pitches);
  }
}
