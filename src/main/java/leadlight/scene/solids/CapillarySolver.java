package leadlight.scene.solids;

/**
 * Surfaces of constant mean curvature over an obstacle, on a square grid: div(grad h / W) = -p with
 * W = sqrt(1 + |grad h|^2), h >= floor, h fixed outside the wetted cells (Young-Laplace without
 * gravity; Bond number of a fine-pitch fillet about 0.01). The floor stands for a solder film, or
 * for a lead that solder may not sink into: where the surface lifts off the film it does so at
 * contact angle zero.
 *
 * <p>Projected successive over-relaxation; W lags by a few sweeps. Contact lines may run between
 * cells: reach shortens the distance to the fixed neighbour. Diverges to steep slopes if p has no
 * surface (a strip of width 2a needs |p| below 1/a).
 */
public final class CapillarySolver {

  private static final int LAG = 3;

  private final int width;
  private final int height;
  final double cell;
  public final boolean[] wet;
  public final double[] floor;
  public final double[] pressure;
  public final double[] h;

  /** Distance to the contact line towards east, west, south, north, in cells; 1 where none. */
  final float[][] reach;

  CapillarySolver(int width, int height, double cellMm) {
    this.width = width;
    this.height = height;
    this.cell = cellMm;
    this.wet = new boolean[width * height];
    this.floor = new double[width * height];
    this.pressure = new double[width * height];
    this.h = new double[width * height];
    this.reach = new float[4][width * height];
    for (float[] way : reach) {
      java.util.Arrays.fill(way, 1);
    }
  }

  /** Relaxes in place; border cells are never wet. */
  void relax(int sweeps, double overRelaxation) {
    int[] cells = wetCells();
    double[] stiff = new double[h.length];
    double load = cell * cell;
    for (int sweep = 0; sweep < sweeps; sweep++) {
      if (sweep % LAG == 0) {
        stiffen(cells, stiff);
      }
      for (int i : cells) {
        double wide = (reach[0][i] + reach[1][i]) / 2;
        double tall = (reach[2][i] + reach[3][i]) / 2;
        double here = stiff[i];
        double east = (here + stiff[i + 1]) * tall / reach[0][i];
        double west = (here + stiff[i - 1]) * tall / reach[1][i];
        double south = (here + stiff[i + width]) * wide / reach[2][i];
        double north = (here + stiff[i - width]) * wide / reach[3][i];
        double flow =
            east * h[i + 1] + west * h[i - 1] + south * h[i + width] + north * h[i - width];
        double push = 2 * pressure[i] * load * wide * tall;
        double goal = (flow + push) / (east + west + south + north);
        h[i] = Math.max(floor[i], h[i] + overRelaxation * (goal - h[i]));
      }
    }
  }

  private int[] wetCells() {
    int count = 0;
    int[] cells = new int[h.length];
    for (int y = 1; y < height - 1; y++) {
      for (int i = y * width + 1; i < (y + 1) * width - 1; i++) {
        if (wet[i]) {
          h[i] = Math.max(h[i], floor[i]);
          cells[count++] = i;
        }
      }
    }
    return java.util.Arrays.copyOf(cells, count);
  }

  private void stiffen(int[] cells, double[] stiff) {
    for (int i : cells) {
      stiff[i] = stiffness(i);
      for (int j : new int[] {i - 1, i + 1, i - width, i + width}) {
        if (!wet[j]) {
          stiff[j] = stiff[i];
        }
      }
    }
  }

  private double stiffness(int i) {
    double gx = (h[i + 1] - h[i - 1]) / ((reach[0][i] + reach[1][i]) * cell);
    double gy = (h[i + width] - h[i - width]) / ((reach[2][i] + reach[3][i]) * cell);
    return 1 / Math.sqrt(1 + gx * gx + gy * gy);
  }
}
