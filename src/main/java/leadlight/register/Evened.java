package leadlight.register;

import leadlight.model.picture.Plane;

/**
 * Light evened out: each pixel against the mean and the spread of light around it, so that
 * exposure, a cast shadow and a lamp that fades along the row play no part.
 */
public final class Evened {

  private Evened() {}

  /**
   * The evened picture, in spreads.
   *
   * @param radius half side of the surroundings, pixels
   * @param floor least spread, grey levels: flat board is not blown up to noise
   */
  public static Plane of(Plane light, int radius, double floor) {
    int w = light.width();
    int h = light.height();
    double[] sum = sums(light, false);
    double[] squares = sums(light, true);
    float[] out = new float[w * h];
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        int x0 = Math.max(0, x - radius);
        int x1 = Math.min(w, x + radius + 1);
        int y0 = Math.max(0, y - radius);
        int y1 = Math.min(h, y + radius + 1);
        double n = (x1 - x0) * (double) (y1 - y0);
        double mean = box(sum, w, x0, y0, x1, y1) / n;
        double spread = Math.max(0, box(squares, w, x0, y0, x1, y1) / n - mean * mean);
        out[y * w + x] = (float) ((light.at(x, y) - mean) / Math.sqrt(spread + floor * floor));
      }
    }
    return new Plane(w, h, out);
  }

  private static double[] sums(Plane light, boolean squared) {
    int w = light.width();
    double[] sums = new double[(w + 1) * (light.height() + 1)];
    for (int y = 0; y < light.height(); y++) {
      double line = 0;
      for (int x = 0; x < w; x++) {
        double value = light.at(x, y);
        line += squared ? value * value : value;
        sums[(y + 1) * (w + 1) + x + 1] = sums[y * (w + 1) + x + 1] + line;
      }
    }
    return sums;
  }

  private static double box(double[] sums, int w, int x0, int y0, int x1, int y1) {
    int line = w + 1;
    return sums[y1 * line + x1]
        - sums[y0 * line + x1]
        - sums[y1 * line + x0]
        + sums[y0 * line + x0];
  }
}
