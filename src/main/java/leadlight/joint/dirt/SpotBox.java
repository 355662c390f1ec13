package leadlight.joint.dirt;

/**
 * Bounding box, middle and spread of a set of raster points.
 *
 * @param left first column
 * @param right last column
 * @param top first row
 * @param bottom last row
 * @param meanX middle
 * @param meanY middle
 * @param xx variance across
 * @param yy variance along
 * @param xy covariance
 */
record SpotBox(
    int left,
    int right,
    int top,
    int bottom,
    double meanX,
    double meanY,
    double xx,
    double yy,
    double xy) {

  static SpotBox of(int[] points, int width) {
    int left = width;
    int right = 0;
    int top = Integer.MAX_VALUE;
    int bottom = 0;
    double x = 0;
    double y = 0;
    double xx = 0;
    double yy = 0;
    double xy = 0;
    int n = points.length;
    for (int at : points) {
      int px = at % width;
      int py = at / width;
      left = Math.min(left, px);
      right = Math.max(right, px);
      top = Math.min(top, py);
      bottom = Math.max(bottom, py);
      x += px / (double) n;
      y += py / (double) n;
      xx += px * (double) px / n;
      yy += py * (double) py / n;
      xy += px * (double) py / n;
    }
    // 1/12: the spread of a single point's own square.
    return new SpotBox(
        left, right, top, bottom, x, y, xx - x * x + 1 / 12.0, yy - y * y + 1 / 12.0, xy - x * y);
  }

  int wide() {
    return right - left + 1;
  }

  int high() {
    return bottom - top + 1;
  }

  /** Ratio of the axes: square root of the ratio of the spread's eigenvalues. */
  double elongation() {
    double half = (xx + yy) / 2;
    double root = Math.hypot((xx - yy) / 2, xy);
    return Math.sqrt((half + root) / Math.max(half - root, 1e-9));
  }
}
