package leadlight.trial.truth;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.vision.Projective;

/** The row as the truth has it, for a trial of the joints alone. */
public final class TruthRow {

  /** Truth files round to 0.001 px. */
  private static final double ROUNDING_PX = 0.001;

  private TruthRow() {}

  /** The true row, as if it had been found. The plane of the map is that of the lands. */
  public static RowOutcome.Found of(PhotoTruth truth) {
    Homography mmToPx = mmToPx(truth);
    List<Lead> leads = new ArrayList<>();
    for (JointTruth joint : truth.joints()) {
      leads.add(lead(joint, truth.landsAtMm().get(joint.pin() - 1), truth, mmToPx));
    }
    return new RowOutcome.Found(
        mmToPx,
        leads,
        truth.pitchPx(),
        truth.angleRad(),
        truth.pitchPx() / truth.pitchMm(),
        BodySide.towards(truth.towardsBodyPx().x(), truth.towardsBodyPx().y()),
        1,
        truth.tiltRad(),
        List.of());
  }

  private static Lead lead(JointTruth joint, double uMm, PhotoTruth truth, Homography mmToPx) {
    double heelMm = truth.landAheadOfToeMm() - truth.landLengthMm();
    return new Lead(
        joint.pin(),
        joint.toePx().orElseGet(() -> mmToPx.map(uMm, 0)),
        joint.heelPx().orElseGet(() -> mmToPx.map(uMm, heelMm)),
        joint.landToePx(),
        joint.landHeelPx(),
        1,
        ROUNDING_PX,
        ROUNDING_PX);
  }

  private static Homography mmToPx(PhotoTruth truth) {
    double toeMm = truth.landAheadOfToeMm();
    double heelMm = toeMm - truth.landLengthMm();
    List<PointPx> mm = new ArrayList<>();
    List<PointPx> px = new ArrayList<>();
    for (JointTruth joint : truth.joints()) {
      double uMm = truth.landsAtMm().get(joint.pin() - 1);
      mm.add(new PointPx(uMm, toeMm));
      px.add(joint.landToePx());
      mm.add(new PointPx(uMm, heelMm));
      px.add(joint.landHeelPx());
    }
    return Projective.fit(mm, px);
  }
}
