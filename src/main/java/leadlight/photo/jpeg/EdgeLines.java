package leadlight.photo.jpeg;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/**
 * The lines between rows of units of one colour: what its blocks above and below each line come to
 * at the line itself, in grey levels, drawn on straight from their last two rows of pixels.
 */
final class EdgeLines {

  /** A normal distribution's standard deviation by its median distance from the median. */
  private static final double SIGMA_BY_MAD = 1.4826;

  private static final double ROOT_2 = Math.sqrt(2);

  private final Component component;
  private final int wide;
  private final int lines;
  private final double[] above;
  private final double[] below;

  /** Sum of the steps before a place, from the first line's first on. */
  private final double[] sums;

  EdgeLines(Component component) {
    this.component = component;
    wide = component.blocksWide;
    int units = (component.blocksHigh + component.downFactor - 1) / component.downFactor;
    lines = Math.max(0, units - 1);
    above = new double[wide * lines];
    below = new double[wide * lines];
    sums = new double[wide * lines + 1];
    double[] atTop = drawnOn(0, 1);
    double[] atBottom = drawnOn(7, 6);
    for (int i = 0; i < above.length; i++) {
      int block = (i / wide + 1) * component.downFactor * component.filledWide + i % wide;
      below[i] = level(block, atTop);
      above[i] = level(block - component.filledWide, atBottom);
      sums[i + 1] = sums[i] + below[i] - above[i];
    }
  }

  /** Spread of steps or levels of which some lie far off. */
  static double spread(double[] values, double middle) {
    return SIGMA_BY_MAD
        * Quantiles.median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
  }

  int wide() {
    return wide;
  }

  int lines() {
    return lines;
  }

  /** Mean step over blocks from..to (excluded) of a line. */
  double step(int line, int from, int to) {
    return (sums[line * wide + to] - sums[line * wide + from]) / (to - from);
  }

  /** The steps of blocks a..b of one line and c..d of the next. */
  double[] steps(int line, int a, int b, int c, int d) {
    double[] steps = below(line, a, b, c, d);
    double[] above = above(line, a, b, c, d);
    for (int i = 0; i < steps.length; i++) {
      steps[i] -= above[i];
    }
    return steps;
  }

  double[] above(int line, int a, int b, int c, int d) {
    return joined(above, line, a, b, c, d);
  }

  double[] below(int line, int a, int b, int c, int d) {
    return joined(below, line, a, b, c, d);
  }

  private double[] joined(double[] levels, int line, int a, int b, int c, int d) {
    int at = line * wide;
    double[] joined = Arrays.copyOfRange(levels, at + a, at + b + d - c);
    System.arraycopy(levels, at + wide + c, joined, b - a, d - c);
    return joined;
  }

  /** Weight of each kept coefficient half a pixel outside of row y, next being its neighbour. */
  private double[] drawnOn(int y, int next) {
    double[] weights = new double[8];
    for (int place = 0; place < 64; place++) {
      int v = Component.NATURAL[place] >> 3;
      if ((Component.NATURAL[place] & 7) == 0) {
        double mean = 1.5 * Math.cos((2 * y + 1) * v * Math.PI / 16);
        mean -= 0.5 * Math.cos((2 * next + 1) * v * Math.PI / 16);
        weights[v] = (v == 0 ? 1 : ROOT_2) / 8 * mean * component.divisors()[place];
      }
    }
    return weights;
  }

  private double level(int block, double[] weights) {
    double sum = 0;
    for (int v = 0; v < 8; v++) {
      sum += weights[v] * component.rowMeans[block * 8 + v];
    }
    return sum;
  }
}
