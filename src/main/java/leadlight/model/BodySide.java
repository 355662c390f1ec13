package leadlight.model;

/** Where the connector's body lies, seen from the leads, in the upright picture. */
public enum BodySide {
  ABOVE("above"),
  RIGHT("right"),
  BELOW("below"),
  LEFT("left");

  private final String id;

  BodySide(String id) {
    this.id = id;
  }

  /** The name in files and reports. */
  public String id() {
    return id;
  }

  /** How far a direction (x right, y down; any length but zero) points to this side, -1 to 1. */
  public double cosine(double dx, double dy) {
    double along =
        switch (this) {
          case ABOVE -> -dy;
          case RIGHT -> dx;
          case BELOW -> dy;
          case LEFT -> -dx;
        };
    return along / Math.hypot(dx, dy);
  }

  /**
   * The side that a direction towards the body points to (x right, y down; any length but zero).
   */
  public static BodySide towards(double dx, double dy) {
    if (Math.abs(dx) > Math.abs(dy)) {
      return dx > 0 ? RIGHT : LEFT;
    }
    return dy > 0 ? BELOW : ABOVE;
  }
}
