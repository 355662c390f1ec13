package leadlight.scene.solids;

/** Solves a surface from coarse to fine: each grid starts from the one before it. */
public final class CapillarySteps {

  private static final int[] COARSER = {4, 2, 1};
  private static final double OVER_RELAXATION = 1.72;

  private final double x0;
  private final double y0;
  private final int width;
  private final int height;
  private final double cell;
  private final int border;

  /** Fills one cell of a grid, (x, y) its middle. */
  public interface Filling {
    void fill(CapillarySolver grid, int k, double x, double y);
  }

  /**
   * @param x0 the corner of the first cell, millimetres
   * @param y0 the same down
   * @param width cells of the finest grid, from {@link #multiple}
   * @param height the same down
   * @param cell size of its cells, millimetres
   * @param border cells at each edge that are left as they are
   */
  public CapillarySteps(double x0, double y0, int width, int height, double cell, int border) {
    this.x0 = x0;
    this.y0 = y0;
    this.width = width;
    this.height = height;
    this.cell = cell;
    this.border = border;
  }

  /** So many cells and a few more, as all grids divide them evenly. */
  public static int multiple(double cells) {
    return (int) Math.ceil(cells / COARSER[0]) * COARSER[0] + COARSER[0];
  }

  /**
   * The finest grid, solved.
   *
   * @param sweeps over each grid, the coarsest first
   */
  public CapillarySolver solve(int[] sweeps, Filling filling) {
    CapillarySolver coarse = null;
    for (int level = 0; level < COARSER.length; level++) {
      int step = COARSER[level];
      CapillarySolver next = new CapillarySolver(width / step, height / step, cell * step);
      fill(next, step, coarse, filling);
      next.relax(sweeps[level], OVER_RELAXATION);
      coarse = next;
    }
    return coarse;
  }

  private void fill(CapillarySolver grid, int step, CapillarySolver coarser, Filling filling) {
    int columns = width / step;
    for (int row = border; row < height / step - border; row++) {
      double y = y0 + (row + 0.5) * step * cell;
      for (int column = border; column < columns - border; column++) {
        int k = row * columns + column;
        filling.fill(grid, k, x0 + (column + 0.5) * step * cell, y);
        if (grid.wet[k] && coarser != null) {
          grid.h[k] = coarser.h[row / 2 * (columns / 2) + column / 2];
        }
      }
    }
  }
}
