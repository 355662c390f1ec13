package leadlight.leg.measure;

import leadlight.leg.find.LegRequest;

/**
 * Whether a thin dark line parts a leg from the solder all round. Solder that wetted a leg climbs
 * it, so that light passes from one to the other without a break; solder that melted on top and
 * never wetted it ends before it, and into the crevice between no light falls. Looked for is the
 * rectangle (legs are stamped of sheet) whose four sides are darkest against what lies closely
 * within and without. Dark in every channel: a fillet that mirrors a green board is not.
 */
final class PartingLine {

  private final PartingTuning tuning;
  private final LegCut cut;
  private final LegRequest.Leg leg;
  private final int width;
  private final int height;
  private final int reach;
  private final double dim;
  private final int left;
  private final int right;
  private final int top;
  private final int bottom;

  /**
   * Takes one leg.
   *
   * @param bright the bright end of the land, grey levels
   */
  PartingLine(PartingTuning tuning, LegCut cut, LegRequest.Leg leg, double bright) {
    this.tuning = tuning;
    this.cut = cut;
    this.leg = leg;
    this.width = cut.width();
    this.height = cut.height();
    double longer = Math.max(leg.landWidthMm(), leg.landHeightMm()) * cut.pxPerMm();
    this.reach =
        (int)
            Math.rint(
                Math.max(
                    tuning.reach().value() * longer,
                    tuning.leastReachPx().value() * cut.perPhotoPx()));
    this.dim = tuning.dim().value() * bright;
    double halfWidth = leg.holeWidthMm() * cut.pxPerMm() / 2 + 1;
    double halfHeight = leg.holeHeightMm() * cut.pxPerMm() / 2 + 1;
    this.left = (int) Math.max(0, Math.ceil((width - 1) / 2.0 - halfWidth));
    this.right = (int) Math.min(width - 1, Math.floor((width - 1) / 2.0 + halfWidth));
    this.top = (int) Math.max(0, Math.ceil((height - 1) / 2.0 - halfHeight));
    this.bottom = (int) Math.min(height - 1, Math.floor((height - 1) / 2.0 + halfHeight));
  }

  /**
   * How deep the line is: the mean darkening along it and that of its faintest side, on the mean; 0
   * where there is none, 1 would be black all round.
   */
  double depth() {
    double most = 0;
    for (double turn : tuning.turnsDeg()) {
      most = Math.max(most, deepest(turned(Math.toRadians(turn))));
    }
    return most;
  }

  /** The lightest channel, the picture turned about its middle. */
  private double[][] turned(double byRad) {
    double cos = Math.cos(byRad);
    double sin = Math.sin(byRad);
    double[][] light = new double[height][width];
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        double x = column - (width - 1) / 2.0;
        double y = row - (height - 1) / 2.0;
        light[row][column] = cut.lightest(cos * x - sin * y, sin * x + cos * y);
      }
    }
    return light;
  }

  private double deepest(double[][] light) {
    double[][] across = new double[width][height + 1];
    double[][] along = new double[height][width + 1];
    for (int y = top; y <= bottom; y++) {
      for (int x = left; x <= right; x++) {
        across[x][y + 1] = across[x][y] + valley(light, x, y, 1, 0);
        along[y][x + 1] = along[y][x] + valley(light, x, y, 0, 1);
      }
    }
    boolean round =
        Math.max(leg.holeWidthMm(), leg.holeHeightMm())
            < tuning.round().value() * Math.min(leg.holeWidthMm(), leg.holeHeightMm());
    boolean wide = leg.holeWidthMm() > leg.holeHeightMm();
    double most = 0;
    if (round || !wide) {
      most = deepest(across, along, false);
    }
    if (round || wide) {
      most = Math.max(most, deepest(across, along, true));
    }
    return most;
  }

  private double deepest(double[][] across, double[][] along, boolean wide) {
    int leastWidth = least(right - left, wide);
    int mostWidth = most(right - left, wide);
    int leastHeight = least(bottom - top, !wide);
    int mostHeight = most(bottom - top, !wide);
    double deepest = 0;
    for (int x = left; x <= right; x++) {
      for (int y = top; y <= bottom; y++) {
        for (int toY = y + leastHeight; toY <= Math.min(bottom, y + mostHeight); toY++) {
          if (atMost(mean(across[x], y, toY)) > deepest) {
            int farthest = Math.min(right, x + mostWidth);
            for (int toX = x + leastWidth; toX <= farthest; toX++) {
              deepest = Math.max(deepest, depth(across, along, x, toX, y, toY, deepest));
            }
          }
        }
      }
    }
    return deepest;
  }

  private static double mean(double[] sums, int from, int to) {
    return (sums[to + 1] - sums[from]) / (to - from + 1);
  }

  private int least(int hole, boolean longer) {
    double share = longer ? tuning.shortest().value() : tuning.thinnest().value();
    return (int) Math.max(reach, Math.rint(share * hole));
  }

  private int most(int hole, boolean longer) {
    return longer ? hole : (int) Math.rint(tuning.thickest().value() * hole);
  }

  /**
   * How deep a rectangle can be of which one side is known: no other is deeper than the deepest.
   */
  private double atMost(double side) {
    return (side + tuning.deepest().value()) / 2;
  }

  /** Depth of a rectangle; 0 if its other long side lets it be no deeper than the best so far. */
  private double depth(
      double[][] across, double[][] along, int x, int toX, int y, int toY, double best) {
    double second = mean(across[toX], y, toY);
    if (atMost(second) <= best) {
      return 0;
    }
    double first = mean(across[x], y, toY);
    double third = mean(along[y], x, toX);
    double fourth = mean(along[toY], x, toX);
    int tall = toY - y + 1;
    int broad = toX - x + 1;
    double all = ((first + second) * tall + (third + fourth) * broad) / (2 * (tall + broad));
    double faintest = Math.min(Math.min(first, second), Math.min(third, fourth));
    return (all + faintest) / 2;
  }

  /** How much darker a place is than the lightest that lies closely on either side. */
  private double valley(double[][] light, int x, int y, int dx, int dy) {
    double before = 0;
    double after = 0;
    for (int step = 1; step <= reach; step++) {
      before = Math.max(before, at(light, x - step * dx, y - step * dy));
      after = Math.max(after, at(light, x + step * dx, y + step * dy));
    }
    double bank = Math.min(before, after);
    double depth = (bank - light[y][x]) / Math.max(dim, bank);
    return Math.max(tuning.lightest().value(), Math.min(tuning.deepest().value(), depth));
  }

  private double at(double[][] light, int x, int y) {
    return light[Math.max(0, Math.min(height - 1, y))][Math.max(0, Math.min(width - 1, x))];
  }
}
