package leadlight.scene.light;

import leadlight.scene.camera.CameraSpec;
import leadlight.scene.camera.Projection;

/** The highest surface on a coarse grid in the row frame, for shadows and reflections. */
public final class HeightMap {

  final double u0;
  final double v0;
  final double cell;
  public final int width;
  public final int height;
  public final float[] z;

  HeightMap(double u0, double v0, double uEnd, double vEnd, double cellMm) {
    this.u0 = u0;
    this.v0 = v0;
    this.cell = cellMm;
    this.width = Math.max(2, (int) Math.ceil((uEnd - u0) / cellMm));
    this.height = Math.max(2, (int) Math.ceil((vEnd - v0) / cellMm));
    this.z = new float[width * height];
    this.tall = new boolean[width * height];
    this.busy = new boolean[width * height];
  }

  /** A map of all that a camera sees of the plane of the board, and a margin round it. */
  public static HeightMap seen(CameraSpec size, Projection camera, double marginMm, double cellMm) {
    double[] ray = new double[4];
    double[] box = {1e9, 1e9, -1e9, -1e9};
    for (int k = 0; k < 4; k++) {
      camera.sight((k & 1) * size.widthPx(), (k >> 1) * size.heightPx(), ray);
      box[0] = Math.min(box[0], ray[0]);
      box[1] = Math.min(box[1], ray[1]);
      box[2] = Math.max(box[2], ray[0]);
      box[3] = Math.max(box[3], ray[1]);
    }
    double m = marginMm;
    return new HeightMap(box[0] - m, box[1] - m, box[2] + m, box[3] + m, cellMm);
  }

  /** Marks where the body stands; {@link #low} leaves it out. */
  public final boolean[] tall;

  /** Cells that something beside the row may shade. */
  public final boolean[] busy;

  /** Rows from here on lie beyond the reach of leads and solder. */
  public int lastRow;

  /** Columns between which leads stand. */
  public int firstColumn;

  public int lastColumn;

  public double u(int x) {
    return u0 + (x + 0.5) * cell;
  }

  public double v(int y) {
    return v0 + (y + 0.5) * cell;
  }

  /** Height without the body. */
  float low(int x, int y) {
    int k = y * width + x;
    return tall[k] ? 0 : z[k];
  }

  /** True where no lead or solder can be near. */
  boolean lonely(int x, int y) {
    int k = y * width + x;
    return tall[k] || !busy[k] && (y > lastRow || x < firstColumn || x > lastColumn);
  }

  public double column(double u) {
    return (u - u0) / cell - 0.5;
  }

  public double row(double v) {
    return (v - v0) / cell - 0.5;
  }
}
