package leadlight.register;

/** Normal equations of a weighted linear least-squares fit, gathered one observation at a time. */
public final class Normal {

  private final int n;
  private final double[][] a;
  private double squares;

  /** Of so many unknowns. */
  public Normal(int unknowns) {
    this.n = unknowns;
    this.a = new double[unknowns][unknowns + 1];
  }

  /** One observation: {@code row . c} should be {@code y}. */
  public void add(double[] row, double y, double weight) {
    for (int r = 0; r < n; r++) {
      double wr = weight * row[r];
      for (int k = r; k < n; k++) {
        a[r][k] += wr * row[k];
      }
      a[r][n] += wr * y;
    }
    squares += weight * y * y;
  }

  /** The solution; what nothing speaks for stays 0. */
  public double[] solution() {
    double[][] m = filled();
    double[] c = new double[n];
    eliminate(m, n);
    for (int r = 0; r < n; r++) {
      c[r] = m[r][n];
    }
    return c;
  }

  /** Element (k, k) of the inverse: the variance of unknown k at unit weight. */
  public double variance(int k) {
    double[][] m = filled();
    for (int r = 0; r < n; r++) {
      m[r][n] = r == k ? 1 : 0;
    }
    eliminate(m, n);
    return m[k][n];
  }

  /** Weighted sum of squares that a solution leaves. */
  public double left(double[] c) {
    double explained = 0;
    for (int r = 0; r < n; r++) {
      explained += c[r] * a[r][n];
    }
    return Math.max(0, squares - explained);
  }

  /** Both halves of the matrix, with a ridge far below anything that was observed. */
  private double[][] filled() {
    double[][] m = new double[n][n + 1];
    for (int r = 0; r < n; r++) {
      for (int k = 0; k < n; k++) {
        m[r][k] = k >= r ? a[r][k] : a[k][r];
      }
      m[r][r] += 1e-9 + 1e-9 * a[r][r];
      m[r][n] = a[r][n];
    }
    return m;
  }

  private static void eliminate(double[][] m, int n) {
    for (int p = 0; p < n; p++) {
      double pivot = m[p][p];
      for (int k = p; k <= n; k++) {
        m[p][k] /= pivot;
      }
      for (int r = 0; r < n; r++) {
        if (r != p && m[r][p] != 0) {
          double f = m[r][p];
          for (int k = p; k <= n; k++) {
            m[r][k] -= f * m[p][k];
          }
        }
      }
    }
  }
}
