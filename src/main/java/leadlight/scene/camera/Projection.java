package leadlight.scene.camera;

import leadlight.model.PointPx;

/**
 * A pinhole camera with one radial distortion term (Hartley and Zisserman, Multiple View Geometry,
 * 2nd ed., sections 6.1 and 7.4). Camera frame: x right, y down, z away from the lens; the aimed
 * point lies at (0, 0, distance).
 */
public final class Projection {

  private final double[] r = new double[9];
  private final CameraSpec camera;
  private final double focalPx;
  private final double halfDiagonalPx;

  public Projection(CameraSpec camera) {
    this.camera = camera;
    this.focalPx = camera.pxPerMm() * camera.distanceMm();
    this.halfDiagonalPx = Math.hypot(camera.widthPx(), camera.heightPx()) / 2;
    double c = Math.cos(camera.rotationRad());
    double s = Math.sin(camera.rotationRad());
    double cx = Math.cos(camera.tiltRad()[0]);
    double sx = Math.sin(camera.tiltRad()[0]);
    double cy = Math.cos(camera.tiltRad()[1]);
    double sy = Math.sin(camera.tiltRad()[1]);
    double[] turn = {c, -s, 0, s, c, 0, 0, 0, 1};
    double[] aboutX = {1, 0, 0, 0, cx, -sx, 0, sx, cx};
    double[] aboutY = {cy, 0, sy, 0, 1, 0, -sy, 0, cy};
    System.arraycopy(times(times(aboutY, aboutX), turn), 0, r, 0, 9);
  }

  private static double[] times(double[] a, double[] b) {
    double[] out = new double[9];
    for (int i = 0; i < 9; i++) {
      int row = i / 3 * 3;
      int col = i % 3;
      out[i] = a[row] * b[col] + a[row + 1] * b[col + 3] + a[row + 2] * b[col + 6];
    }
    return out;
  }

  /** Where a point of the row frame is seen. Exact. */
  public PointPx map(double uMm, double vMm, double zMm) {
    double u = uMm - camera.aimAlongRowMm();
    double v = vMm - camera.aimAlongLeadMm();
    double w = -zMm;
    double x = r[0] * u + r[1] * v + r[2] * w;
    double y = r[3] * u + r[4] * v + r[5] * w;
    double depth = r[6] * u + r[7] * v + r[8] * w + camera.distanceMm();
    double px = focalPx * x / depth;
    double py = focalPx * y / depth;
    double stretch =
        1 + camera.lens().k1() * (px * px + py * py) / (halfDiagonalPx * halfDiagonalPx);
    return new PointPx(px * stretch + centreX(), py * stretch + centreY());
  }

  /**
   * The line of sight through a pixel: where it meets the board and how it moves per millimetre of
   * height, written to ray as u, v, du/dz, dv/dz. The distortion is undone by six fixed-point steps
   * (below 1e-6 px for |k1| up to 0.05).
   */
  public void sight(double xPx, double yPx, double[] ray) {
    double qx = xPx - centreX();
    double qy = yPx - centreY();
    double px = qx;
    double py = qy;
    for (int i = 0; i < 6 && camera.lens().k1() != 0; i++) {
      double k = 1 + camera.lens().k1() * (px * px + py * py) / (halfDiagonalPx * halfDiagonalPx);
      px = qx / k;
      py = qy / k;
    }
    double dx = px / focalPx;
    double dy = py / focalPx;
    double du = r[0] * dx + r[3] * dy + r[6];
    double dv = r[1] * dx + r[4] * dy + r[7];
    double dw = r[2] * dx + r[5] * dy + r[8];
    double ou = -r[6] * camera.distanceMm();
    double ov = -r[7] * camera.distanceMm();
    double ow = -r[8] * camera.distanceMm();
    ray[2] = -du / dw;
    ray[3] = -dv / dw;
    ray[0] = camera.aimAlongRowMm() + ou + ray[2] * ow;
    ray[1] = camera.aimAlongLeadMm() + ov + ray[3] * ow;
  }

  /** A direction of the camera's frame (x right, y down, z towards the lens) in (u, v, z up). */
  public double[] toRow(double x, double y, double towards) {
    return new double[] {
      r[0] * x + r[3] * y - r[6] * towards,
      r[1] * x + r[4] * y - r[7] * towards,
      -(r[2] * x + r[5] * y) + r[8] * towards
    };
  }

  private double centreX() {
    return (camera.widthPx() - 1) / 2.0;
  }

  private double centreY() {
    return (camera.heightPx() - 1) / 2.0;
  }
}
