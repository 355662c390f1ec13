package leadlight.joint.dirt;

import leadlight.joint.cut.PatchGrid;

/**
 * Residue: a brown, translucent film over the board beside a joint. A film swallows blue more than
 * red (Beer-Lambert) and makes nothing brighter; metal, bare land and print brighten red, a shadow
 * dims both alike, and what is left is more yellow than blue on any mask. Lands are left out: bare
 * gold shines in the same colours.
 */
public final class StainFinder {

  /** Farther out traces and print begin. */
  private static final double BEYOND_LAND = 0.3;

  private final RowCells cells;
  private final DirtLimits.Stain limits;
  private final double dark;

  /**
   * Takes a row.
   *
   * @param dark level of the photo's black below the row's dark end, share of the row's range
   */
  public StainFinder(RowCells cells, DirtLimits.Stain limits, double dark) {
    this.cells = cells;
    this.limits = limits;
    this.dark = dark + limits.floor().value();
  }

  /** Square pitches of film beside joint i, times its depth. */
  public double[] amounts() {
    double[] amounts = new double[cells.joints()];
    int to = cells.row(cells.geometry().ahead() + BEYOND_LAND);
    double point = 1.0 / (PatchGrid.DENSITY * PatchGrid.DENSITY);
    for (int y = 0; y <= to; y++) {
      for (int x = 0; x < cells.width(); x++) {
        if (cells.onBoard(x, y)) {
          double depth = depth(x, y);
          amounts[x / RowCells.CELL] += depth >= limits.depth().value() ? depth * point : 0;
        }
      }
    }
    return amounts;
  }

  /** Log ratio by which blue is dimmed more than red; 0 where this cannot be a film. */
  public double depth(int x, int y) {
    double red = ratio(x, y, 1 / 2.0, 1 / 3.0);
    double green = ratio(x, y, -1 / 2.0, 1 / 3.0);
    double blue = ratio(x, y, 0, -2 / 3.0);
    boolean yellow = cells.value(2, x, y) > 0;
    boolean film = yellow && blue < 1 && red < 1 + limits.brightens().value() && red > blue;
    double depth = film ? Math.log(red / blue) : 0;
    return film && Math.log(red / green) >= limits.greenShare().value() * depth ? depth : 0;
  }

  /**
   * A colour over its typical level. Undoes light = (r + g + b) / 3, redGreen = r - g, yellowBlue =
   * (r + g) / 2 - b.
   */
  private double ratio(int x, int y, double redGreen, double yellowBlue) {
    double here =
        cells.value(0, x, y) + redGreen * cells.value(1, x, y) + yellowBlue * cells.value(2, x, y);
    double usual =
        cells.typical(0, x, y)
            + redGreen * cells.typical(1, x, y)
            + yellowBlue * cells.typical(2, x, y);
    return above(here) / above(usual);
  }

  private double above(double level) {
    return Math.max(level + dark, limits.floor().value());
  }
}
