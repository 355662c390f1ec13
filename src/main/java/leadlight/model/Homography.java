package leadlight.model;

import java.util.Arrays;

/**
 * A plane-to-plane projective map, row-major 3 x 3: (x', y', w') = m (x, y, 1), divided by w'
 * (Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 2.3). Exact; points on the line
 * that maps to infinity give an {@link ArithmeticException}.
 */
public final class Homography {

  private final double[] m;

  /**
   * Takes nine numbers, row by row.
   *
   * @throws IllegalArgumentException if there are not nine finite numbers
   */
  public Homography(double... rowMajor) {
    if (rowMajor.length != 9) {
      throw new IllegalArgumentException("a homography has 9 numbers, got " + rowMajor.length);
    }
    for (double value : rowMajor) {
      Checks.finite("homography element", value);
    }
    this.m = rowMajor.clone();
  }

  /** The image of (x, y). */
  public PointPx map(double x, double y) {
    double w = m[6] * x + m[7] * y + m[8];
    if (w == 0) {
      throw new ArithmeticException("point at infinity");
    }
    return new PointPx((m[0] * x + m[1] * y + m[2]) / w, (m[3] * x + m[4] * y + m[5]) / w);
  }

  /** The map back. */
  public Homography inverse() {
    double a = m[4] * m[8] - m[5] * m[7];
    double b = m[5] * m[6] - m[3] * m[8];
    double c = m[3] * m[7] - m[4] * m[6];
    double det = m[0] * a + m[1] * b + m[2] * c;
    if (det == 0) {
      throw new ArithmeticException("a homography without inverse");
    }
    return new Homography(
        a / det,
        (m[2] * m[7] - m[1] * m[8]) / det,
        (m[1] * m[5] - m[2] * m[4]) / det,
        b / det,
        (m[0] * m[8] - m[2] * m[6]) / det,
        (m[2] * m[3] - m[0] * m[5]) / det,
        c / det,
        (m[1] * m[6] - m[0] * m[7]) / det,
        (m[0] * m[4] - m[1] * m[3]) / det);
  }

  /** This map applied after another: {@code after(first).map(p)} is {@code map(first.map(p))}. */
  public Homography after(Homography first) {
    double[] product = new double[9];
    for (int i = 0; i < 9; i++) {
      int row = i / 3 * 3;
      int column = i % 3;
      product[i] =
          m[row] * first.m[column]
              + m[row + 1] * first.m[column + 3]
              + m[row + 2] * first.m[column + 6];
    }
    return new Homography(product);
  }

  /** The nine numbers, row by row. */
  public double[] rowMajor() {
    return m.clone();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Homography that && Arrays.equals(m, that.m);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(m);
  }

  @Override
  public String toString() {
    return "Homography" + Arrays.toString(m);
  }
}
