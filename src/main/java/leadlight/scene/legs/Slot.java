package leadlight.scene.legs;

/**
 * The outline of a land or a plated hole: a rectangle whose shorter ends are half circles.
 *
 * @param widthMm along x
 * @param heightMm along y
 */
record Slot(double widthMm, double heightMm) {

  /** How deep a place lies inside, from the middle of the slot; negative outside. */
  double inside(double x, double y) {
    double radius = Math.min(widthMm, heightMm) / 2;
    double ax = Math.max(0, Math.abs(x) - (widthMm / 2 - radius));
    double ay = Math.max(0, Math.abs(y) - (heightMm / 2 - radius));
    return radius - Math.hypot(ax, ay);
  }

  /** From the middle to the outline, in a direction of length 1. */
  double reach(double dx, double dy) {
    double low = 0;
    double high = Math.max(widthMm, heightMm);
    for (int i = 0; i < 30; i++) {
      double at = (low + high) / 2;
      if (inside(at * dx, at * dy) > 0) {
        low = at;
      } else {
        high = at;
      }
    }
    return low;
  }

  double areaMm2() {
    double radius = Math.min(widthMm, heightMm) / 2;
    double straight = Math.abs(widthMm - heightMm);
    return Math.PI * radius * radius + 2 * radius * straight;
  }
}
