package leadlight.register;

import leadlight.model.picture.Plane;

/**
 * Where a picture changes, whichever way: the logarithm of its gradient's size, evened. A lamp that
 * moves turns light to dark, and a bright edge to a faint one; the edges of leads, lands and print
 * stay where they are.
 */
final class Outlines {

  private Outlines() {}

  /**
   * The outlines.
   *
   * @param even evened light
   * @param radius half side of the surroundings, pixels
   * @param tuning what is too faint to count
   */
  static Plane of(Plane even, int radius, RegisterTuning tuning) {
    Plane soft = Focus.softer(Focus.softer(even));
    int w = soft.width();
    int h = soft.height();
    float[] out = new float[w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        double gx = slope(soft, x, y, 1, 0);
        double gy = slope(soft, x, y, 0, 1);
        out[y * w + x] = (float) Math.log(tuning.faintStep().value() + Math.hypot(gx, gy));
      }
    }
    return Evened.of(new Plane(w, h, out), radius, tuning.outlineFloor().value());
  }

  private static double slope(Plane light, int x, int y, int dx, int dy) {
    int x0 = Math.max(0, x - dx);
    int y0 = Math.max(0, y - dy);
    int x1 = Math.min(light.width() - 1, x + dx);
    int y1 = Math.min(light.height() - 1, y + dy);
    return (light.at(x1, y1) - light.at(x0, y0)) / Math.max(1, x1 - x0 + y1 - y0);
  }
}
