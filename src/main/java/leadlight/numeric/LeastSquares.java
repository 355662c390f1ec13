package leadlight.numeric;

import java.util.Arrays;

/** Weighted linear least squares, made robust by Tukey's biweight (iteratively reweighted). */
public final class LeastSquares {

  private LeastSquares() {}

  /**
   * Coefficients c that make rows[i] . c close to y[i].
   *
   * @param tuning residual beyond which an observation has no weight, in units of {@code y};
   *     shrinks with the residuals' spread but not below {@code floor}
   */
  public static double[] robust(
      double[][] rows, double[] y, double[] weight, double tuning, double floor) {
    double[] w = weight.clone();
    double[] c = solve(rows, y, w);
    for (int round = 0; round < 8; round++) {
      double[] r = new double[y.length];
      for (int i = 0; i < y.length; i++) {
        r[i] = Math.abs(y[i] - dot(rows[i], c));
      }
      double limit = Math.max(floor, Math.min(tuning, 4.7 * 1.48 * weightedMedian(r, weight)));
      for (int i = 0; i < y.length; i++) {
        double q = r[i] / limit;
        w[i] = q < 1 ? weight[i] * (1 - q * q) * (1 - q * q) : 0;
      }
      c = solve(rows, y, w);
    }
    return c;
  }

  public static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private static double weightedMedian(double[] values, double[] weight) {
    Integer[] order = new Integer[values.length];
    double total = 0;
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
      total += weight[i];
    }
    Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
    double sum = 0;
    for (int i : order) {
      sum += weight[i];
      if (sum >= total / 2) {
        return values[i];
      }
    }
    return 0;
  }

  /** Normal equations with a slight ridge, so that too few observations give the small answer. */
  private static double[] solve(double[][] rows, double[] y, double[] w) {
    int n = rows[0].length;
    double[][] a = new double[n][n + 1];
    for (int i = 0; i < y.length; i++) {
      for (int r = 0; r < n; r++) {
        for (int k = 0; k < n; k++) {
          a[r][k] += w[i] * rows[i][r] * rows[i][k];
        }
        a[r][n] += w[i] * rows[i][r] * y[i];
      }
    }
    for (int r = 0; r < n; r++) {
      a[r][r] += 1e-9 + 1e-6 * a[r][r];
    }
    return eliminate(a);
  }

  private static double[] eliminate(double[][] a) {
    int n = a.length;
    for (int p = 0; p < n; p++) {
      for (int r = 0; r < n; r++) {
        if (r != p) {
          double f = a[r][p] / a[p][p];
          for (int k = p; k <= n; k++) {
            a[r][k] -= f * a[p][k];
          }
        }
      }
    }
    double[] c = new double[n];
    for (int r = 0; r < n; r++) {
      c[r] = a[r][n] / a[r][r];
    }
    return c;
  }
}
