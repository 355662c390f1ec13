package leadlight.trial;

import leadlight.model.Homography;
import leadlight.model.PointPx;

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
    double shownPx = Math.max(PITCHES_ACROSS * photo.pitchPx(), LANDS_ALONG * toe.distanceTo(heel));
    double scale = shownPx / sidePx;
    double ux = scale * Math.cos(photo.angleRad());
    double uy = scale * Math.sin(photo.angleRad());
    double side = photo.outwards();
    double vx = -side * uy;
    double vy = side * ux;
    double half = (sidePx - 1) / 2.0;
    return new Homography(
        ux,
        vx,
        (toe.x() + heel.x()) / 2 - half * (ux + vx),
        uy,
        vy,
        (toe.y() + heel.y()) / 2 - half * (uy + vy),
        0,
        0,
        1);
  }
}
