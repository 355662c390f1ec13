package leadlight.register;

import java.util.Arrays;
import leadlight.model.Homography;
import leadlight.model.picture.Plane;

/**
 * One step of laying a cut over another: the change of place that makes two pictures agree best, by
 * Gauss and Newton (Lucas and Kanade 1981; Baker and Matthews 2004), robust against what only one
 * of them shows (Tukey's biweight).
 */
final class Alignment {

  /** What a step may do; the fewer, the less does what only one picture shows lead it astray. */
  enum Freedom {
    /** Shift, turn and scale. */
    SIMILAR,
    /** Shear and another scale across, besides: a small tilt. */
    AFFINE,
    /** All that a camera does to a plane. */
    PROJECTIVE
  }

  private static final int UNKNOWNS = 8;

  private final Plane fixed;
  private final Plane moving;
  private final boolean[] use;
  private final Freedom freedom;
  private final double half;

  Alignment(Plane fixed, Plane moving, boolean[] use, Freedom freedom) {
    this.fixed = fixed;
    this.moving = moving;
    this.use = use;
    this.freedom = freedom;
    this.half = fixed.width() / 2.0;
  }

  /** From a place of the fixed cut to its place in the moving one, grid pixels. */
  Homography step() {
    double spread = Robust.spread(medianDifference());
    Normal normal = new Normal(UNKNOWNS);
    double[] row = new double[UNKNOWNS];
    int w = fixed.width();
    for (int y = 1; y < fixed.height() - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        int i = y * w + x;
        double r = fixed.data()[i] - moving.data()[i];
        double weight = Robust.weight(r, spread);
        if (use[i] && weight > 0) {
          fill(row, x, y, gradient(i, 1), gradient(i, w));
          normal.add(row, r, weight);
        }
      }
    }
    return map(full(normal.solution()));
  }

  /** The mean gradient of both: errors of second order cancel. */
  private double gradient(int i, int step) {
    float[] a = fixed.data();
    float[] b = moving.data();
    return (a[i + step] - a[i - step] + b[i + step] - b[i - step]) / 4;
  }

  private void fill(double[] row, int px, int py, double gx, double gy) {
    double x = (px - half) / half;
    double y = (py - fixed.height() / 2.0) / half;
    row[0] = gx;
    row[1] = gx * x;
    row[2] = gx * y;
    row[3] = gy;
    row[4] = gy * x;
    row[5] = gy * y;
    double both = gx * x + gy * y;
    row[6] = both * x;
    row[7] = both * y;
    if (freedom == Freedom.AFFINE) {
      row[6] = 0;
      row[7] = 0;
    }
    if (freedom == Freedom.SIMILAR) {
      similar(row);
    }
  }

  /** Scale and turn in the places of the first two slopes, nothing in those of the others. */
  private static void similar(double[] row) {
    row[1] += row[5];
    row[2] -= row[4];
    Arrays.fill(row, 4, UNKNOWNS, 0);
  }

  /** What a fit with fewer unknowns found, as the eight of a projective map. */
  private double[] full(double[] c) {
    if (freedom == Freedom.SIMILAR) {
      return new double[] {c[0], c[1], c[2], c[3], -c[2], c[1], 0, 0};
    }
    return c;
  }

  /** The small change as a projective map, right to first order in it. */
  private Homography map(double[] c) {
    double s = half;
    Homography unit =
        new Homography(
            1 + c[1] / s,
            c[2] / s,
            c[0] / s,
            c[4] / s,
            1 + c[5] / s,
            c[3] / s,
            -c[6] / s,
            -c[7] / s,
            1);
    double cy = fixed.height() / 2.0;
    Homography in = new Homography(1 / s, 0, -half / s, 0, 1 / s, -cy / s, 0, 0, 1);
    return in.inverse().after(unit).after(in);
  }

  private double medianDifference() {
    double[] sizes = new double[use.length];
    int n = 0;
    for (int i = 0; i < use.length; i++) {
      if (use[i]) {
        sizes[n++] = Math.abs(fixed.data()[i] - moving.data()[i]);
      }
    }
    Arrays.sort(sizes, 0, n);
    return n == 0 ? 1 : Math.max(1e-3, sizes[n / 2]);
  }
}
