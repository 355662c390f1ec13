package leadlight.row.find;

import leadlight.model.picture.Plane;
import leadlight.numeric.Parabola;

/** The middle of a lead in a folded picture. */
public final class Symmetry {

  private Symmetry() {}

  /**
   * Offset in pitches, -0.5 to 0.5, of the axis of mirror symmetry of the gradients that has the
   * brighter surround, from the middle of a picture two pitches wide.
   */
  public static double axis(Plane fold, int s) {
    int steps = 2 * s;
    double[] cost = new double[steps];
    double[] bright = new double[steps];
    int middle = (fold.width() - 1) / 2;
    for (int i = 0; i < steps; i++) {
      double axis = middle + (i - s) / 2.0;
      cost[i] = cost(fold, axis, s);
      bright[i] = brightness(fold, axis, s);
    }
    int best = 0;
    double bestScore = Double.NEGATIVE_INFINITY;
    double largest = 0;
    for (double v : cost) {
      largest = Math.max(largest, v);
    }
    double lowB = Double.MAX_VALUE;
    double highB = -Double.MAX_VALUE;
    for (double v : bright) {
      lowB = Math.min(lowB, v);
      highB = Math.max(highB, v);
    }
    for (int i = 0; i < steps; i++) {
      double score =
          -cost[i] / Math.max(1e-9, largest) + (bright[i] - lowB) / Math.max(1e-9, highB - lowB);
      if (score > bestScore) {
        bestScore = score;
        best = i;
      }
    }
    double l = cost[(best + steps - 1) % steps];
    double r = cost[(best + 1) % steps];
    double curve = l - 2 * cost[best] + r;
    double sub = curve > 0 ? Math.max(-0.5, Math.min(0.5, Parabola.vertex(l, cost[best], r))) : 0;
    return (best + sub - s) / 2.0 / s;
  }

  private static double cost(Plane fold, double axis, int s) {
    double sum = 0;
    for (int y = 0; y < fold.height(); y++) {
      for (double d = 0.5; d < s / 2.0; d += 0.5) {
        double l = step(fold, axis - d, y);
        double r = step(fold, axis + d, y);
        sum += Math.abs(l - r);
      }
    }
    return sum;
  }

  private static double step(Plane fold, double x, int y) {
    return Math.abs(value(fold, x + 1, y) - value(fold, x - 1, y));
  }

  private static double brightness(Plane fold, double axis, int s) {
    double sum = 0;
    for (int y = 0; y < fold.height(); y++) {
      for (double d = -s / 2.0; d <= s / 2.0; d += 0.5) {
        sum += Math.cos(2 * Math.PI * d / s) * value(fold, axis + d, y);
      }
    }
    return sum;
  }

  private static double value(Plane p, double x, int y) {
    double c = Math.max(0, Math.min(p.width() - 1.001, x));
    int i = (int) c;
    return p.at(i, y) * (1 - c + i) + p.at(i + 1, y) * (c - i);
  }
}
