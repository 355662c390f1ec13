package leadlight.joint.dirt;

import leadlight.joint.cut.PatchGrid;
import leadlight.numeric.Quantiles;

/**
 * Pits in the land ahead of the toe: a point darker than its rim in every direction, in the joint
 * itself and against the row's typical picture, and more so than its neighbours' deepest.
 */
public final class PitFinder {

  /** Steps to the rim in eight directions, raster points: circles of radius 4 and 5. */
  private static final int[][][] RIMS = {
    {{4, 0}, {3, 3}, {0, 4}, {-3, 3}, {-4, 0}, {-3, -3}, {0, -4}, {3, -3}},
    {{5, 0}, {4, 4}, {0, 5}, {-4, 4}, {-5, 0}, {-4, -4}, {0, -5}, {4, -4}}
  };

  /** Rows nearer than this to the row's ends have no whole rim. */
  private static final int REACH = 5;

  /** Two quartile distances of a calm row are nearly nothing; this much is noise. */
  private static final double LEAST_SPREAD = 0.02;

  private final RowCells cells;
  private final DirtLimits.Pit limits;

  public PitFinder(RowCells cells, DirtLimits.Pit limits) {
    this.cells = cells;
    this.limits = limits;
  }

  /** Depth of the deepest pit of each joint, share of the range; 0 if its row shows the like. */
  public double[] depths() {
    double[] depths = new double[cells.joints()];
    for (int i = 0; i < depths.length; i++) {
      depths[i] = deepest(i);
    }
    double middle = Quantiles.middle(depths);
    double spread = Quantiles.of(depths, 0.75) - middle + LEAST_SPREAD;
    for (int i = 0; i < depths.length; i++) {
      boolean unlike = depths[i] - middle >= limits.spread().value() * spread;
      depths[i] = unlike ? Math.max(0, depths[i]) : 0;
    }
    return depths;
  }

  private double deepest(int joint) {
    double ahead = cells.geometry().ahead();
    int middle = joint * RowCells.CELL + RowCells.CELL / 2;
    int half = (int) Math.round(cells.geometry().landHalf() / 2 * PatchGrid.DENSITY);
    int from = Math.max(REACH, cells.row(limits.from().value() * ahead));
    int to = Math.min(cells.height() - 1 - REACH, cells.row(limits.to().value() * ahead));
    double deepest = -Double.MAX_VALUE;
    for (int y = from; y <= to; y++) {
      for (int x = middle - half; x <= middle + half; x++) {
        for (int[][] rim : RIMS) {
          deepest = Math.max(deepest, depth(x, y, rim));
        }
      }
    }
    return deepest;
  }

  /** Own light may fail in one direction, where a band runs by; the change may not. */
  private double depth(int x, int y, int[][] rim) {
    double least = Double.MAX_VALUE;
    double second = Double.MAX_VALUE;
    double change = Double.MAX_VALUE;
    for (int[] step : rim) {
      int rimX = x + step[0];
      int rimY = y + step[1];
      double rise = cells.value(0, rimX, rimY) - cells.value(0, x, y);
      change = Math.min(change, cells.change(0, rimX, rimY) - cells.change(0, x, y));
      second = Math.min(second, Math.max(least, rise));
      least = Math.min(least, rise);
    }
    return Math.min(change, second);
  }
}
