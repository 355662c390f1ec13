package leadlight.row.place;

import java.util.function.DoubleUnaryOperator;

/**
 * Arithmetic on values given row by row down a strip; places and lengths in pitches, edges repeat.
 *
 * @param perPitch rows a pitch
 */
record Rows(int perPitch) {

  /** Mean over the rows from {@code from} to {@code to} relative to each row, by channel. */
  double[][] mean(double[][] rows, double from, double to) {
    int last = rows.length - 1;
    int channels = rows[0].length;
    double[][] sum = new double[rows.length + 1][channels];
    for (int y = 0; y <= last; y++) {
      for (int c = 0; c < channels; c++) {
        sum[y + 1][c] = sum[y][c] + rows[y][c];
      }
    }
    double[][] out = new double[rows.length][channels];
    for (int y = 0; y <= last; y++) {
      int a = clamp(y + offset(from), last);
      int b = clamp(y + offset(to), last);
      for (int c = 0; c < channels; c++) {
        out[y][c] = (sum[b + 1][c] - sum[a][c]) / (b - a + 1);
      }
    }
    return out;
  }

  /** The same of single values. */
  double[] mean(double[] values, double from, double to) {
    double[][] rows = new double[values.length][];
    for (int y = 0; y < rows.length; y++) {
      rows[y] = new double[] {values[y]};
    }
    return first(mean(rows, from, to));
  }

  private static double[] first(double[][] rows) {
    double[] out = new double[rows.length];
    for (int y = 0; y < out.length; y++) {
      out[y] = rows[y][0];
    }
    return out;
  }

  /** Values of {@code far} pitches further on. */
  double[] shifted(double[] values, double far) {
    double[] out = new double[values.length];
    for (int y = 0; y < out.length; y++) {
      out[y] = values[clamp(y + offset(far), out.length - 1)];
    }
    return out;
  }

  /** Largest value between {@code from} and {@code to} relative to each row, below {@code end}. */
  double[] largest(double[] values, double from, double to, double end) {
    double[] out = new double[values.length];
    for (int y = 0; y < out.length; y++) {
      int b = (int) Math.min(Math.min(y + offset(to), end), values.length - 1);
      for (int q = Math.max(0, y + offset(from)); q <= b; q++) {
        out[y] = Math.max(out[y], values[q]);
      }
    }
    return out;
  }

  /** Change per tenth of a pitch, by channel, smoothed by a Gaussian. */
  double[][] steps(double[][] rows, double sigma) {
    double[][] smooth = FoldProfile.smoothed(rows, sigma * perPitch);
    double[][] out = new double[rows.length][rows[0].length];
    for (int y = 1; y + 1 < rows.length; y++) {
      for (int c = 0; c < out[y].length; c++) {
        out[y][c] = (smooth[y + 1][c] - smooth[y - 1][c]) * perPitch / 20;
      }
    }
    return out;
  }

  /** Root mean square difference of two colours, row by row. */
  static double[] distance(double[][] a, double[][] b) {
    double[] out = new double[a.length];
    for (int y = 0; y < out.length; y++) {
      double sum = 0;
      for (int c = 0; c < a[y].length; c++) {
        sum += (a[y][c] - b[y][c]) * (a[y][c] - b[y][c]) / a[y].length;
      }
      out[y] = Math.sqrt(sum);
    }
    return out;
  }

  /** Mean of the channels after {@code f}, row by row. */
  static double[] channels(double[][] rows, DoubleUnaryOperator f) {
    double[] out = new double[rows.length];
    for (int y = 0; y < out.length; y++) {
      for (double value : rows[y]) {
        out[y] += f.applyAsDouble(value) / rows[y].length;
      }
    }
    return out;
  }

  static double[] each(double[] values, DoubleUnaryOperator f) {
    double[] out = new double[values.length];
    for (int y = 0; y < out.length; y++) {
      out[y] = f.applyAsDouble(values[y]);
    }
    return out;
  }

  /** Grows like x/scale for small x and like a logarithm for large; 0 below 0. */
  static double[] log(double[] values, double scale) {
    return each(values, x -> Math.log1p(Math.max(0, x) / scale));
  }

  private int offset(double pitches) {
    return (int) Math.round(pitches * perPitch);
  }

  private static int clamp(int y, int last) {
    return Math.max(0, Math.min(last, y));
  }
}
