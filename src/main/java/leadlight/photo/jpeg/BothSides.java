package leadlight.photo.jpeg;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/**
 * Whether both sides of a seam's border show one picture. A plain surface shows none, but its noise
 * is the same on both sides; where two drawn areas meet there is no noise, and where a picture
 * meets its frame one side alone has some.
 */
final class BothSides {

  private final EdgeLines edges;
  private final double finest;
  private final JpegLimits.Seam limits;

  /** What both sides of a border show. */
  enum Kind {
    /** Both change in the same way along it. */
    ONE_PICTURE,
    /** Nothing but noise, as much on one side as on the other. */
    NOISE,
    /** Nothing at all, or noise on one side only. */
    NOTHING,
    /** Two different pictures. */
    UNLIKE
  }

  /** {@code finest} is the finest step that the file can hold, in grey levels. */
  BothSides(EdgeLines edges, double finest, JpegLimits.Seam limits) {
    this.edges = edges;
    this.finest = finest;
    this.limits = limits;
  }

  /** Of the border that leaves {@code line} for the next one at block {@code from}. */
  Kind at(int line, int from) {
    double[] above = edges.above(line, from, edges.wide(), 0, from);
    double[] below = edges.below(line, from, edges.wide(), 0, from);
    double over = EdgeLines.spread(above, Quantiles.median(above));
    double under = EdgeLines.spread(below, Quantiles.median(below));
    if (over >= limits.texture()) {
      return alike(above, below) ? Kind.ONE_PICTURE : Kind.UNLIKE;
    }
    if (under >= limits.texture()) {
      return Kind.UNLIKE;
    }
    double less = Math.min(over, under);
    boolean noisy = less >= finest && less >= limits.slope() * Math.max(over, under);
    return noisy ? Kind.NOISE : Kind.NOTHING;
  }

  private boolean alike(double[] above, double[] below) {
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
    return products >= limits.likeness() * Math.sqrt(squaresAbove * squaresBelow)
        && products >= limits.slope() * squaresAbove
        && products * limits.slope() <= squaresAbove;
  }
}
