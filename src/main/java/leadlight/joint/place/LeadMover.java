package leadlight.joint.place;

import java.util.ArrayList;
import java.util.List;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.JointTuning;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;

/**
 * Moves leads to where {@link DisplacedLeads} found them, where that is clearly elsewhere than the
 * row has them; the others keep the row's finer place.
 */
final class LeadMover {

  private static final JointTuning.Moving MOVING = JointTuning.builtIn().moving();

  private LeadMover() {}

  static List<Lead> moved(List<JointPatch> joints, List<DisplacedLeads.Placed> places) {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      leads.add(moved(joints.get(i), places.get(i)));
    }
    return leads;
  }

  private static Lead moved(JointPatch joint, DisplacedLeads.Placed place) {
    double toeMove = place.toe() - joint.offset();
    double heelMove = place.heel() - joint.heelOffset();
    boolean elsewhere = Math.max(Math.abs(toeMove), Math.abs(heelMove)) >= MOVING.leastMove();
    if (!elsewhere || place.gain() < MOVING.leastGain()) {
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
        Math.max(lead.uAcrossPx(), MOVING.movedU() * joint.pitchPx()),
        lead.uAlongPx());
  }

  private static PointPx shifted(PointPx from, JointPatch joint, double pitches) {
    return new PointPx(from.x() + joint.acrossX() * pitches, from.y() + joint.acrossY() * pitches);
  }
}
