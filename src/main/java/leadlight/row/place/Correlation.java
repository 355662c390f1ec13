package leadlight.row.place;

/** How alike two profiles are, and where between the samples a row of scores is highest. */
final class Correlation {

  private Correlation() {}

  /** Normalised correlation, each channel's mean removed. */
  static double of(double[][] a, int ca, double[][] b, int cb, int w) {
    int channels = a[0].length;
    double dot = 0;
    double aa = 1e-3;
    double bb = 1e-3;
    for (int c = 0; c < channels; c++) {
      double ma = 0;
      double mb = 0;
      for (int i = -w; i <= w; i++) {
        ma += a[ca + i][c] / (2 * w + 1);
        mb += b[cb + i][c] / (2 * w + 1);
      }
      for (int i = -w; i <= w; i++) {
        double x = a[ca + i][c] - ma;
        double y = b[cb + i][c] - mb;
        dot += x * y;
        aa += x * x;
        bb += y * y;
      }
    }
    return dot / Math.sqrt(aa * bb);
  }
}
