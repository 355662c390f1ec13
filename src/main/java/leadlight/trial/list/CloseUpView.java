package leadlight.trial.list;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.RowNote;

/**
 * What a close-up of a joint shows: the joint in the middle, its neighbours beside it, the body
 * above, pin 1 to the left, at the row's own angle.
 */
public final class CloseUpView {

  /** A joint and most of both neighbours. */
  private static final double PITCHES_ACROSS = 3.4;

  /** The land and some board beyond both its ends. */
  private static final double LANDS_ALONG = 1.4;

  private CloseUpView() {}

  /** From pixels of a square of {@code sidePx} to pixels of the photo. */
  public static Homography of(PhotoTruth photo, JointTruth joint, int sidePx) {
    PointPx toe = joint.landToePx();
    PointPx heel = joint.landHeelPx();
    PointPx middle = new PointPx((toe.x() + heel.x()) / 2, (toe.y() + heel.y()) / 2);
    double shownPx = shownPx(photo.pitchPx(), toe.distanceTo(heel));
    return square(middle, shownPx / sidePx, photo.angleRad(), photo.outwards(), sidePx);
  }

  /** The same for a lead of a real photo, by its place in the note's order, from 0. */
  public static Homography of(RowNote photo, int lead, int sidePx) {
    double shownPx = shownPx(photo.pitchPx(), 2 * photo.halfLengthPx());
    return square(
        photo.centresPx().get(lead), shownPx / sidePx, photo.angleRad(), photo.outwards(), sidePx);
  }

  private static double shownPx(double pitchPx, double lengthPx) {
    return Math.max(PITCHES_ACROSS * pitchPx, LANDS_ALONG * lengthPx);
  }

  private static Homography square(
      PointPx middle, double scale, double angleRad, double outwards, int sidePx) {
    double ux = scale * Math.cos(angleRad);
    double uy = scale * Math.sin(angleRad);
    double vx = -outwards * uy;
    double vy = outwards * ux;
    double half = (sidePx - 1) / 2.0;
    return new Homography(
        ux, vx, middle.x() - half * (ux + vx), uy, vy, middle.y() - half * (uy + vy), 0, 0, 1);
  }
}
