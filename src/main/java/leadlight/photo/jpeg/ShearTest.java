package leadlight.photo.jpeg;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for damage that moves a part of the picture sideways and keeps the count of blocks: a unit
 * was lost and another gained. Between the two all stands a unit too far to one side; its border
 * runs as that of a seam ({@link SeamTest}), and so does it once more where the shear ends. On that
 * border what lies below goes on from above a unit or two aside and not straight; on the rest of
 * both lines it goes on straight. How well it does is the variance of the steps, by whichever
 * height; no edge in a scene is so on both parts.
 */
final class ShearTest {

  private final JpegLimits.Shear limits;
  private final int wide;
  private final int lines;
  private final int unit;

  /** The finest step that the file can hold, squared. */
  private final double finest;

  private final Steps straight;
  private final List<Steps> aside = new ArrayList<>();

  private ShearTest(Component brightness, JpegLimits.Shear limits) {
    this.limits = limits;
    EdgeLines edges = new EdgeLines(brightness);
    wide = edges.wide();
    lines = edges.lines();
    unit = brightness.sidewaysFactor;
    finest = Math.pow(brightness.divisors()[0] / 8.0, 2);
    straight = new Steps(edges, 0);
    for (int units = 1; units <= limits.units(); units++) {
      aside.add(new Steps(edges, units * unit));
      aside.add(new Steps(edges, -units * unit));
    }
  }

  /** Whether a part of a picture was moved, by its brightness. */
  static boolean isIn(Component brightness, JpegLimits.Shear limits) {
    return new ShearTest(brightness, limits).shear();
  }

  private boolean shear() {
    for (int line = 0; line + 1 < lines; line++) {
      for (int from = unit; from < wide; from += unit) {
        if (Math.min(from, wide - from) >= limits.blocks() && isShear(line, from)) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean isShear(int line, int from) {
    double moved = straight.onBorder(line, from);
    double still = straight.offBorder(line, from);
    if (moved < limits.strength() * Math.max(finest, still)
        || moved < limits.texture() * limits.texture()) {
      return false;
    }
    for (Steps steps : aside) {
      double rest = Math.max(finest, Math.max(still, steps.onBorder(line, from)));
      if (Math.min(moved, steps.offBorder(line, from)) >= limits.strength() * rest) {
        return true;
      }
    }
    return false;
  }

  /** Steps from above each line to what lies below it, so many blocks aside. */
  private static final class Steps {

    /** Steps whose variance tells anything, at least. */
    private static final int FEWEST = 4;

    private final int wide;

    /** Steps, their squares and how many there are, before each place of each line. */
    private final double[][][] sums;

    Steps(EdgeLines edges, int aside) {
      wide = edges.wide();
      sums = new double[edges.lines()][wide + 1][3];
      for (int line = 0; line < edges.lines(); line++) {
        double[] above = edges.above(line, 0, wide, 0, 0);
        double[] below = edges.below(line, 0, wide, 0, 0);
        for (int x = 0; x < wide; x++) {
          boolean within = x + aside >= 0 && x + aside < wide;
          double step = within ? below[x] - above[x + aside] : 0;
          double[] before = sums[line][x];
          sums[line][x + 1] =
              new double[] {
                before[0] + step, before[1] + step * step, before[2] + (within ? 1 : 0)
              };
        }
      }
    }

    /** Variance on the border that leaves {@code line} for the next at a block. */
    double onBorder(int line, int from) {
      return variance(line, from, wide, 0, from);
    }

    double offBorder(int line, int from) {
      return variance(line, 0, from, from, wide);
    }

    private double variance(int line, int a, int b, int c, int d) {
      double[] sum = new double[3];
      for (int i = 0; i < 3; i++) {
        sum[i] = sums[line][b][i] - sums[line][a][i] + sums[line + 1][d][i] - sums[line + 1][c][i];
      }
      double mean = sum[0] / sum[2];
      return sum[2] < FEWEST ? 0 : Math.max(0, sum[1] / sum[2] - mean * mean);
    }
  }
}
