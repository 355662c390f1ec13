package leadlight.numeric;

/** Values between the points of a grid. */
public final class Bilinear {

  private Bilinear() {}

  /**
   * Between four neighbours.
   *
   * @param fx how far to the right, 0 to 1
   * @param fy how far down
   */
  public static float of(float nw, float ne, float sw, float se, float fx, float fy) {
    return (nw * (1 - fx) + ne * fx) * (1 - fy) + (sw * (1 - fx) + se * fx) * fy;
  }

  /** The same of doubles. */
  public static double of(double nw, double ne, double sw, double se, double fx, double fy) {
    return (nw * (1 - fx) + ne * fx) * (1 - fy) + (sw * (1 - fx) + se * fx) * fy;
  }
}
