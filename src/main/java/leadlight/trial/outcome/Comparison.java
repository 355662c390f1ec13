package leadlight.trial.outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.numeric.Quantiles;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;

/** Sets what Leadlight said of a photo beside the truth, by the rules in docs/accuracy.md. */
public final class Comparison {

  /**
   * A row is right if its toes lie, in the median, closer than this to the true ones; of a lead
   * that is missing, its land's end.
   */
  static final double RIGHT_BELOW_OF_PITCH = 0.35;

  private Comparison() {}

  /**
   * Compares one photo. The joints of a wrong row are compared pin by pin like any others: a
   * verdict on the wrong joint is a wrong verdict.
   */
  public static PhotoOutcome of(PhotoTruth truth, ScoredPhoto scored) {
    if (scored.row() instanceof RowOutcome.NotFound none) {
      return new PhotoOutcome(
          truth, RowResult.NOT_FOUND, Double.NaN, Opinion.code(none.reason()), List.of());
    }
    List<JointOutcome> joints = new ArrayList<>();
    for (int i = 0; i < truth.leads(); i++) {
      joints.add(joint(truth, truth.joints().get(i), scored.joints().get(i)));
    }
    double median =
        Quantiles.middle(joints.stream().mapToDouble(Comparison::distancePx).toArray())
            / truth.pitchPx();
    RowResult row = median < RIGHT_BELOW_OF_PITCH ? RowResult.RIGHT : RowResult.WRONG;
    return new PhotoOutcome(truth, row, median, "", joints);
  }

  private static double distancePx(JointOutcome joint) {
    if (joint.lateralPx().isPresent()) {
      return Math.hypot(joint.lateralPx().getAsDouble(), joint.axialPx().getAsDouble());
    }
    return joint.opinion().joint().lead().landToePx().distanceTo(joint.truth().landToePx());
  }

  private static JointOutcome joint(PhotoTruth photo, JointTruth truth, GradedJoint opinion) {
    Optional<PointPx> toe = truth.toePx();
    PointPx reported = opinion.joint().lead().toePx();
    double cos = Math.cos(photo.angleRad());
    double sin = Math.sin(photo.angleRad());
    double outwards = photo.outwards();
    return new JointOutcome(
        photo.photo(),
        truth,
        opinion,
        result(truth.class2(), opinion.verdict()),
        component(toe, reported, cos, sin),
        component(toe, reported, -outwards * sin, outwards * cos));
  }

  private static OptionalDouble component(
      Optional<PointPx> from, PointPx to, double alongX, double alongY) {
    return from.isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            (to.x() - from.get().x()) * alongX + (to.y() - from.get().y()) * alongY);
  }

  static JointResult result(TrueClass truth, Verdict verdict) {
    if (truth == TrueClass.LIMIT) {
      return JointResult.NOT_COUNTED;
    }
    if (verdict == Verdict.UNJUDGED) {
      return JointResult.UNJUDGED;
    }
    boolean called = verdict == Verdict.DEFECT;
    if (truth == TrueClass.DEFECT) {
      return called ? JointResult.CAUGHT : JointResult.MISSED;
    }
    return called ? JointResult.FALSE_CALL : JointResult.PASSED;
  }
}
