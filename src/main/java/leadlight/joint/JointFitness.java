package leadlight.joint;

import java.util.Locale;
import java.util.Optional;
import leadlight.model.Lead;
import leadlight.model.PointPx;
import leadlight.vision.BlurMeter;
import leadlight.vision.Frame;

/**
 * What a joint's own piece of the photo gives.
 *
 * @param pitchPx pixels a pitch
 * @param blurPx edge sigma around the joint; 0 if no edge shows it
 * @param burntShare share of the joint that is burnt out
 */
record JointFitness(double pitchPx, double blurPx, double burntShare) {

  static JointFitness of(
      Frame photo, JointPatch joint, RowGeometry geometry, FitnessLimits limits) {
    double land = geometry.landHalf();
    double[] levels =
        new Zone(joint.light(), -land, land, geometry.heelY(), joint.ahead()).values();
    int burnt = 0;
    for (double level : levels) {
      if (level >= limits.burntLevel().value()) {
        burnt++;
      }
    }
    return new JointFitness(joint.pitchPx(), blurPx(photo, joint), burnt / (double) levels.length);
  }

  private static double blurPx(Frame photo, JointPatch joint) {
    Lead lead = joint.lead();
    double margin = joint.pitchPx();
    PointPx a = lead.landToePx();
    PointPx b = lead.heelPx();
    int x0 = inside(Math.min(a.x(), b.x()) - margin, photo.widthPx());
    int y0 = inside(Math.min(a.y(), b.y()) - margin, photo.heightPx());
    int x1 = inside(Math.max(a.x(), b.x()) + margin, photo.widthPx());
    int y1 = inside(Math.max(a.y(), b.y()) + margin, photo.heightPx());
    return x1 <= x0 || y1 <= y0
        ? 0
        : BlurMeter.edgeSigmaPx(photo, x0, y0, x1 - x0, y1 - y0).orElse(0);
  }

  private static int inside(double place, int size) {
    return (int) Math.max(0, Math.min(size - 1, Math.round(place)));
  }

  /** Why fillets cannot be judged here, if they cannot. */
  Optional<String> unfitBecause(FitnessLimits limits) {
    if (pitchPx < limits.fineFromPitchPx().value()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "fillets cannot be told at %.0f px a pitch; photograph closer, so that a pitch covers"
                  + " %.0f px or more",
              pitchPx,
              Math.ceil(limits.fineFromPitchPx().value())));
    }
    if (blurPx / pitchPx > limits.fineToBlurPitch().value()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "blurred: an edge is %.2f of a pitch wide here; focus on the toes and hold still",
              blurPx / pitchPx));
    }
    if (burntShare > limits.burntMost().value()) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "glare burns out %.0f %% of the joint; dim or turn the lamp",
              100 * burntShare));
    }
    return Optional.empty();
  }
}
