package leadlight.motion;

/** Cubic interpolation along a line of pixels (Keys 1981, a = -1/2). */
final class Cubic {

  private Cubic() {}

  /** The value {@code f}, 0 to 1, behind index {@code i}. */
  static double at(float[] data, int i, double f) {
    double p0 = data[i - 1];
    double p1 = data[i];
    double p2 = data[i + 1];
    double p3 = data[i + 2];
    return p1
        + f / 2 * (p2 - p0 + f * (2 * p0 - 5 * p1 + 4 * p2 - p3 + f * (3 * (p1 - p2) + p3 - p0)));
  }
}
