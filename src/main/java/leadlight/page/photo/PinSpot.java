package leadlight.page.photo;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.PointPx;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.Lead;

/**
 * Where a pin's number and sign stand in the photo as taken: ahead of its land's open end, so that
 * they cover no joint. All in pixels of the shown photo.
 *
 * @param pin the pin
 * @param verdict id of the verdict that counts
 * @param x the land's open end
 * @param y the land's open end
 * @param signX middle of the sign
 * @param signY middle of the sign
 * @param noX middle of the number
 * @param noY middle of the number
 * @param size height of sign and number
 */
public record PinSpot(
    int pin,
    String verdict,
    double x,
    double y,
    double signX,
    double signY,
    double noX,
    double noY,
    double size) {

  /** Share of the pitch that a number of two figures may take, else neighbours touch. */
  private static final double OF_PITCH = 0.6;

  /** Numbers smaller than this cannot be read; then every other one stands farther out. */
  private static final double LEAST_PX = 13;

  /**
   * The places of all pins.
   *
   * @param factor size in the shown photo over size in the photo
   */
  public static List<PinSpot> of(List<GradedJoint> joints, double factor) {
    List<PinSpot> spots = new ArrayList<>();
    for (int i = 0; i < joints.size() && joints.size() > 1; i++) {
      Lead other = joints.get(i == 0 ? 1 : i - 1).joint().lead();
      spots.add(of(joints.get(i), other, factor));
    }
    return spots;
  }

  private static PinSpot of(GradedJoint joint, Lead other, double factor) {
    Lead lead = joint.joint().lead();
    PointPx toe = lead.landToePx();
    PointPx heel = lead.landHeelPx();
    double long1 = Math.hypot(toe.x() - heel.x(), toe.y() - heel.y());
    double dx = (toe.x() - heel.x()) / Math.max(long1, 1e-9);
    double dy = (toe.y() - heel.y()) / Math.max(long1, 1e-9);
    double pitch =
        factor * Math.hypot(toe.x() - other.landToePx().x(), toe.y() - other.landToePx().y());
    double size = Math.max(LEAST_PX, OF_PITCH * pitch);
    double x = factor * (toe.x() + 0.5);
    double y = factor * (toe.y() + 0.5);
    boolean crowded = pitch * OF_PITCH < LEAST_PX;
    double sign = size * (crowded && joint.pin() % 2 == 0 ? 2.9 : 0.9);
    double number = sign + 1.05 * size;
    return new PinSpot(
        joint.pin(),
        joint.verdict().id(),
        tenths(x),
        tenths(y),
        tenths(x + sign * dx),
        tenths(y + sign * dy),
        tenths(x + number * dx),
        tenths(y + number * dy),
        tenths(size));
  }

  private static double tenths(double value) {
    return Math.round(value * 10) / 10.0;
  }
}
