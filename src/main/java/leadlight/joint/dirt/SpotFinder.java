package leadlight.joint.dirt;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.joint.cut.PatchGrid;
import leadlight.numeric.Quantiles;

/** Finds pieces of board beside the lands that are unlike the row's typical picture. */
public final class SpotFinder {

  private final RowCells cells;
  private final double[] metal;
  private final double from;
  private final boolean[] open;
  private final int width;

  /**
   * Takes a row.
   *
   * @param metal colour of the leads: light, red less green, yellow less blue
   * @param from strangeness from which a point belongs to a spot
   */
  public SpotFinder(RowCells cells, double[] metal, double from) {
    this.cells = cells;
    this.metal = metal;
    this.from = from;
    this.width = cells.width();
    this.open = new boolean[width * cells.height()];
  }

  public List<Spot> find() {
    for (int y = 0; y < cells.height(); y++) {
      for (int x = 0; x < width; x++) {
        open[y * width + x] = cells.onBoard(x, y) && cells.strangeness(x, y) > from;
      }
    }
    List<Spot> spots = new ArrayList<>();
    for (int at = 0; at < open.length; at++) {
      if (open[at]) {
        spots.add(describe(collect(at)));
      }
    }
    return spots;
  }

  /** All points connected by an edge; they are closed, so that each is met once. */
  private int[] collect(int start) {
    int[] points = new int[16];
    int count = 0;
    points[count++] = start;
    open[start] = false;
    for (int next = 0; next < count; next++) {
      for (int at : around(points[next])) {
        if (at >= 0 && open[at]) {
          open[at] = false;
          if (count == points.length) {
            points = Arrays.copyOf(points, 2 * count);
          }
          points[count++] = at;
        }
      }
    }
    return Arrays.copyOf(points, count);
  }

  /** The four neighbours; -1 off the cells. */
  private int[] around(int at) {
    int x = at % width;
    return new int[] {
      x > 0 ? at - 1 : -1,
      x < width - 1 ? at + 1 : -1,
      at >= width ? at - width : -1,
      at + width < open.length ? at + width : -1
    };
  }

  private Spot describe(int[] points) {
    Box box = Box.of(points, width);
    double peak = 0;
    double highlight = -Double.MAX_VALUE;
    double grey = 0;
    for (int at : points) {
      peak = Math.max(peak, cells.strangeness(at % width, at / width));
      highlight = Math.max(highlight, cells.value(0, at % width, at / width));
      grey += greyGain(at % width, at / width) / points.length;
    }
    int x = (int) Math.round(box.meanX());
    int y = (int) Math.round(box.meanY());
    return new Spot(
        points.length,
        Math.max(box.wide(), box.high()) / (double) PatchGrid.DENSITY,
        box.elongation(),
        points.length / (double) (box.wide() * box.high()),
        onLand(points),
        Arrays.stream(points).anyMatch(this::atEdge),
        x,
        y,
        peak,
        highlight - typicalLight(points),
        grey,
        spans(x, box) / peak);
  }

  private boolean atEdge(int at) {
    return Arrays.stream(around(at)).anyMatch(beside -> beside < 0);
  }

  /** Share of the rim that lies on a land, not on clean board. */
  private double onLand(int[] points) {
    int rim = 0;
    int land = 0;
    for (int at : points) {
      for (int beside : around(at)) {
        if (beside >= 0 && !cells.onBoard(beside % width, beside / width)) {
          land++;
          rim++;
        } else if (beside >= 0 && cells.strangeness(beside % width, beside / width) <= from) {
          rim++;
        }
      }
    }
    return land / (double) Math.max(1, rim);
  }

  private double typicalLight(int[] points) {
    double[] light = new double[points.length];
    for (int i = 0; i < light.length; i++) {
      light[i] = cells.typical(0, points[i] % width, points[i] / width);
    }
    return Quantiles.middle(light);
  }

  private double greyGain(int x, int y) {
    return Math.hypot(cells.typical(1, x, y) - metal[1], cells.typical(2, x, y) - metal[2])
        - Math.hypot(cells.value(1, x, y) - metal[1], cells.value(2, x, y) - metal[2]);
  }

  /**
   * What the least strange column of the gap shows beside the spot; beyond the lands there is no
   * gap.
   */
  private double spans(int x, Box box) {
    if (!cells.besideLand(x)) {
      return 0;
    }
    int left = x;
    int right = x;
    while (left > 0 && cells.besideLand(left - 1)) {
      left--;
    }
    while (right < width - 1 && cells.besideLand(right + 1)) {
      right++;
    }
    double least = Double.MAX_VALUE;
    for (int column = left; column <= right; column++) {
      double greatest = 0;
      for (int y = box.top(); y <= box.bottom(); y++) {
        greatest = Math.max(greatest, cells.strangeness(column, y));
      }
      least = Math.min(least, greatest);
    }
    return cells.along(box.top()) > cells.geometry().ahead() ? 0 : least;
  }

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
  private record Box(
      int left,
      int right,
      int top,
      int bottom,
      double meanX,
      double meanY,
      double xx,
      double yy,
      double xy) {

    static Box of(int[] points, int width) {
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
      return new Box(
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
}
