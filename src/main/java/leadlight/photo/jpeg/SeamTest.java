package leadlight.photo.jpeg;

import java.util.List;
import leadlight.numeric.Quantiles;

/**
 * Looks for damage that keeps the count of blocks. Blocks are coded by their difference from the
 * one before, so from the damaged one on all of a colour is brighter or darker: its border runs
 * along the upper edge of the units from that one to the right, and along the lower edge of those
 * to its left. A seam is a step of one height on both parts of that border and none on the rest of
 * both lines, with the same picture on both sides; no edge in a scene is so. Plain surfaces, of
 * which only noise is the same, count in brightness alone: a colour changes by one level at a
 * slanted edge of a scene, too.
 */
final class SeamTest {

  /** Standard error of a median by that of a mean, of many normal values. */
  private static final double MEDIAN_ERROR = 1.2533;

  private final JpegLimits.Seam limits;
  private final EdgeLines edges;
  private final BothSides sides;
  private final boolean ofBrightness;
  private final int wide;
  private final int unit;

  /** The finest step in brightness that the file can hold, in grey levels. */
  private final double finest;

  private SeamTest(Component component, boolean ofBrightness, JpegLimits.Seam limits) {
    this.limits = limits;
    this.ofBrightness = ofBrightness;
    edges = new EdgeLines(component);
    wide = edges.wide();
    unit = component.sidewaysFactor;
    finest = component.divisors()[0] / 8.0;
    sides = new BothSides(edges, finest, limits);
  }

  /** Whether one of the colours has a seam; the first is brightness. */
  static boolean anyIn(List<Component> components, JpegLimits.Seam limits) {
    return components.stream()
        .anyMatch(
            component -> new SeamTest(component, component == components.get(0), limits).seam());
  }

  private boolean seam() {
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
    double sigma =
        Math.max(finest, Math.max(EdgeLines.spread(on, height), EdgeLines.spread(off, elsewhere)));
    double error = MEDIAN_ERROR * sigma * Math.sqrt(2.0 / wide);
    return Math.abs(height) >= limits.coarseSteps() * finest
        && Math.abs(height - elsewhere) >= limits.strength() * error
        && samePicture(line, from);
  }

  private boolean samePicture(int line, int from) {
    return switch (sides.at(line, from)) {
      case ONE_PICTURE -> true;
      case NOISE -> ofBrightness;
      case NOTHING, UNLIKE -> false;
    };
  }
}
