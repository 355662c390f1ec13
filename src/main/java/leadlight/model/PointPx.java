package leadlight.model;

/**
 * A place in the upright photo.
 *
 * @param x pixels to the right of the centre of the first pixel
 * @param y pixels below the centre of the first pixel
 */
public record PointPx(double x, double y) {

  /** Refuses coordinates that are not finite. */
  public PointPx {
    Checks.finite("x", x);
    Checks.finite("y", y);
  }

  /** Distance to another place, in pixels. */
  public double distanceTo(PointPx other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
