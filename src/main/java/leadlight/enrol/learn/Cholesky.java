package leadlight.enrol.learn;

/** Solves symmetric, positive definite equations (Golub and Van Loan, Matrix Computations). */
final class Cholesky {

  private Cholesky() {}

  /**
   * The solution x of A x = b.
   *
   * @param a its lower triangle counts, and is used up
   * @throws IllegalStateException if A is not positive definite
   */
  static double[] solved(double[][] a, double[] b) {
    int count = b.length;
    for (int i = 0; i < count; i++) {
      for (int k = 0; k <= i; k++) {
        double rest = a[i][k];
        for (int m = 0; m < k; m++) {
          rest -= a[i][m] * a[k][m];
        }
        if (i == k && !(rest > 0)) {
          throw new IllegalStateException("not positive definite at place " + i);
        }
        a[i][k] = i == k ? Math.sqrt(rest) : rest / a[k][k];
      }
    }
    double[] x = b.clone();
    for (int i = 0; i < count; i++) {
      for (int m = 0; m < i; m++) {
        x[i] -= a[i][m] * x[m];
      }
      x[i] /= a[i][i];
    }
    for (int i = count - 1; i >= 0; i--) {
      for (int m = i + 1; m < count; m++) {
        x[i] -= a[m][i] * x[m];
      }
      x[i] /= a[i][i];
    }
    return x;
  }
}
