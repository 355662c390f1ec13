package leadlight.trial;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;

/**
 * The homography through pairs of points, by linear least squares with the last element fixed at 1
 * (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 4.1.2, "inhomogeneous
 * solution"). Good where no point lies near the map's horizon, as in a view from above.
 */
final class HomographyFit {

  private static final int UNKNOWNS = 8;

  private HomographyFit() {}

  static Homography fit(List<double[]> from, List<PointPx> to) {
    double[][] normal = new double[UNKNOWNS][UNKNOWNS + 1];
    for (int i = 0; i < to.size(); i++) {
      double x = from.get(i)[0];
      double y = from.get(i)[1];
      double px = to.get(i).x();
      double py = to.get(i).y();
      add(normal, new double[] {x, y, 1, 0, 0, 0, -px * x, -px * y}, px);
      add(normal, new double[] {0, 0, 0, x, y, 1, -py * x, -py * y}, py);
    }
    double[] h = solve(normal);
    return new Homography(h[0], h[1], h[2], h[3], h[4], h[5], h[6], h[7], 1);
  }

  private static void add(double[][] normal, double[] row, double value) {
    for (int i = 0; i < UNKNOWNS; i++) {
      for (int j = 0; j < UNKNOWNS; j++) {
        normal[i][j] += row[i] * row[j];
      }
      normal[i][UNKNOWNS] += row[i] * value;
    }
  }

  /** Gauss-Jordan elimination with the largest pivot of each column. */
  private static double[] solve(double[][] a) {
    int n = a.length;
    for (int column = 0; column < n; column++) {
      int pivot = column;
      for (int row = column + 1; row < n; row++) {
        pivot = Math.abs(a[row][column]) > Math.abs(a[pivot][column]) ? row : pivot;
      }
      double[] swap = a[pivot];
      a[pivot] = a[column];
      a[column] = swap;
      for (int row = 0; row < n; row++) {
        if (row != column) {
          subtract(a[row], a[column], a[row][column] / a[column][column]);
        }
      }
    }
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = a[i][n] / a[i][i];
    }
    return x;
  }

  private static void subtract(double[] from, double[] row, double factor) {
    for (int i = 0; i < from.length; i++) {
      from[i] -= factor * row[i];
    }
  }
}
