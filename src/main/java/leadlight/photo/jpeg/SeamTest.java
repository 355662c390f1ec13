package leadlight.photo.jpeg;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/**
 * Looks for damage that keeps the count of blocks. Blocks are coded by their difference from the
 * one before, so from the damaged one on all of a colour is brighter or darker: its border runs
 * along the upper edge of the units from that one to the right, and along the lower edge of those
 * to its left. A seam is a step of one height on both parts of that border and none on the rest of
 * both lines, with the same picture on both sides; no edge in a scene is so.
 */
final class SeamTest {

  /** A normal distribution's standard deviation by its median distance from the median. */
  private static final double SIGMA_BY_MAD = 1.4826;

  /** Standard error of a median by that of a mean, of many normal values. */
  private static final double MEDIAN_ERROR = 1.2533;

  private final JpegLimits.Seam limits;
  private final EdgeLines edges;
  private final int wide;
  private final int unit;

  /** The finest step in brightness that the file can hold, in grey levels. */
  private final double finest;

  SeamTest(Component component, JpegLimits.Seam limits) {
    this.limits = limits;
    edges = new EdgeLines(component);
    wide = edges.wide();
    unit = component.sidewaysFactor;
    finest = component.divisors()[0] / 8.0;
  }

  boolean seam() {
    for (int line = 0; line + 1 < edges.lines(); line++) {
      for (int from = unit; from < wide; from += unit) {
        if (Math.min(from, wide - from) >= limits.blocks()
            && worthALook(line, from)
            && isSeam(line, from)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Before medians are taken, means decide what is worth it. */
  private boolean worthALook(int line, int from) {
    double roughly = limits.roughShare();
    double right = edges.step(line, from, wide);
    double left = edges.step(line + 1, 0, from);
    double height = (right * (wide - from) + left * from) / wide;
    return Math.abs(height) >= limits.coarseSteps() * finest * roughly
        && Math.abs(right / height - 1) < roughly
        && Math.abs(left / height - 1) < roughly
        && Math.abs(edges.step(line, 0, from) / height) < roughly
        && Math.abs(edges.step(line + 1, from, wide) / height) < roughly;
  }

  private boolean isSeam(int line, int from) {
    double[] on = edges.steps(line, from, wide, 0, from);
    double[] off = edges.steps(line, 0, from, from, wide);
    double height = Quantiles.median(on);
    double elsewhere = Quantiles.median(off);
    double sigma = Math.max(finest, Math.max(spread(on, height), spread(off, elsewhere)));
    double error = MEDIAN_ERROR * sigma * Math.sqrt(2.0 / wide);
    return Math.abs(height) >= limits.coarseSteps() * finest
        && Math.abs(height - elsewhere) >= limits.strength() * error
        && samePicture(line, from);
  }

  private boolean samePicture(int line, int from) {
    double[] above = edges.above(line, from, wide, 0, from);
    double[] below = edges.below(line, from, wide, 0, from);
    double meanAbove = Arrays.stream(above).average().orElse(0);
    double meanBelow = Arrays.stream(below).average().orElse(0);
    double squaresAbove = 0;
    double squaresBelow = 0;
    double products = 0;
    for (int i = 0; i < above.length; i++) {
      squaresAbove += (above[i] - meanAbove) * (above[i] - meanAbove);
      squaresBelow += (below[i] - meanBelow) * (below[i] - meanBelow);
      products += (above[i] - meanAbove) * (below[i] - meanBelow);
    }
    return spread(above, Quantiles.median(above)) >= limits.texture()
        && products >= limits.likeness() * Math.sqrt(squaresAbove * squaresBelow)
        && products >= limits.slope() * squaresAbove
        && products * limits.slope() <= squaresAbove;
  }

  private static double spread(double[] values, double middle) {
    return SIGMA_BY_MAD
        * Quantiles.median(Arrays.stream(values).map(v -> Math.abs(v - middle)).toArray());
  }
}
