package leadlight.vision.blur;

import java.util.List;
import java.util.OptionalDouble;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * How soft edges are: the sigma, in pixels, of the Gaussian that a sharp step would have been
 * blurred by. It includes all that blurs: lens, focus, motion, the pixel's own area (0.29 px),
 * stretching of the picture, JPEG.
 *
 * <p>Approximate. The median over the strongest edge points is taken, so that a few doubled or
 * shaded edges do not matter; edges next to clipped pixels are left out. Good to about 8 % on clean
 * steps of 0.5 to 8 px. 0 stands for edges steeper than any lens makes them, as sharpening leaves
 * them. Noise lowers it, by up to a fifth at 5 grey levels on a step of 120. The method is
 * described at {@code EdgeSamples}; above {@value #HALVE_ABOVE_PX} px it is repeated on the picture
 * shrunk to half.
 */
public final class BlurMeter {

  /** Beyond about twice the coarse scale, two scales hardly differ. */
  private static final double HALVE_ABOVE_PX = 3;

  /** Variance, in full pixels, that averaging two by two adds: (2^2 - 1) / 12. */
  private static final double HALVING_VARIANCE = 0.25;

  /** What is looked at around a part, so that edges at its border count in full. */
  private static final int CONTEXT_PX = 16;

  private BlurMeter() {}

  /**
   * The edge blur of a part of a picture, which must lie within it. Cost: about 50 ns a pixel.
   *
   * @param halvings how often the picture is halved first; a sharp edge is then not told from one
   *     of half a pixel of the smallest picture
   * @return in pixels of the full picture; empty if the part has too few clear edges, as flat or
   *     burnt-out parts have
   */
  public static OptionalDouble edgeSigmaPx(
      Frame frame, int x, int y, int widthPx, int heightPx, int halvings) {
    Rect part = new Rect(x, y, widthPx, heightPx);
    if (x < 0
        || y < 0
        || widthPx < 1
        || heightPx < 1
        || widthPx > frame.widthPx() - x
        || heightPx > frame.heightPx() - y) {
      throw new IllegalArgumentException(
          part + " must lie within " + frame.widthPx() + " x " + frame.heightPx());
    }
    OptionalDouble sigma =
        halvings == 0
            ? within(frame.mat(), part)
            : within(frame.halved(halvings), shrunk(part, halvings));
    for (int i = 0; i < halvings; i++) {
      sigma = doubled(sigma);
    }
    return sigma;
  }

  private static Rect shrunk(Rect part, int halvings) {
    return halvings == 0 ? part : shrunk(half(part), halvings - 1);
  }

  private static OptionalDouble within(Mat picture, Rect part) {
    if (part.area() < 1) {
      return OptionalDouble.empty();
    }
    int left = Math.max(0, part.x - CONTEXT_PX);
    int top = Math.max(0, part.y - CONTEXT_PX);
    int right = Math.min(picture.cols(), part.x + part.width + CONTEXT_PX);
    int bottom = Math.min(picture.rows(), part.y + part.height + CONTEXT_PX);
    try (MatScope scope = new MatScope()) {
      Mat view = scope.add(picture.submat(top, bottom, left, right));
      Mat grey = scope.add(new Mat());
      Imgproc.cvtColor(view, grey, Imgproc.COLOR_BGR2GRAY);
      Rect inside = new Rect(part.x - left, part.y - top, part.width, part.height);
      return sigma(grey, List.of(inside));
    }
  }

  /**
   * The edge blur of a picture, where it has its strongest edges: a large picture is measured in
   * its busiest tiles, about half a megapixel of them, so that the cost stays below 0.1 s.
   *
   * @return empty if there are too few clear edges
   */
  public static OptionalDouble edgeSigmaPx(GreyScan scan) {
    List<Rect> tiles = BusyTiles.of(scan);
    EdgeSamples samples = new EdgeSamples();
    for (Rect tile : tiles) {
      try (MatScope scope = new MatScope()) {
        Rect wide = EdgeSamples.grown(tile, scan.all().size());
        Mat grey = scan.grey(wide, scope);
        samples.add(grey, new Rect(tile.x - wide.x, tile.y - wide.y, tile.width, tile.height));
      }
    }
    OptionalDouble sigma = samples.sigmaPx();
    if (!soft(sigma)) {
      return sigma;
    }
    Rect all = scan.all();
    if (all.width % 2 == 0 && all.height % 2 == 0) {
      return coarser(sigma, fromHalf(scan.half(), tiles));
    }
    try (MatScope scope = new MatScope()) {
      return coarser(sigma, halved(scan.grey(all, scope), tiles));
    }
  }

  private static OptionalDouble sigma(Mat grey, List<Rect> parts) {
    EdgeSamples samples = new EdgeSamples();
    parts.forEach(part -> samples.add(grey, part));
    OptionalDouble sigma = samples.sigmaPx();
    return soft(sigma) ? coarser(sigma, halved(grey, parts)) : sigma;
  }

  private static boolean soft(OptionalDouble sigma) {
    return sigma.isPresent() && sigma.getAsDouble() > HALVE_ABOVE_PX;
  }

  private static OptionalDouble coarser(OptionalDouble sigma, OptionalDouble coarse) {
    return coarse.isPresent() ? coarse : finite(sigma);
  }

  private static OptionalDouble halved(Mat grey, List<Rect> parts) {
    try (MatScope scope = new MatScope()) {
      Mat small = scope.add(new Mat());
      Size size = new Size((grey.cols() + 1) / 2, (grey.rows() + 1) / 2);
      Imgproc.resize(grey, small, size, 0, 0, Imgproc.INTER_AREA);
      return fromHalf(small, parts);
    }
  }

  /** The edge blur, in full pixels, by parts of the picture in half size. */
  private static OptionalDouble fromHalf(Mat half, List<Rect> parts) {
    List<Rect> halves = parts.stream().map(p -> half(p)).filter(p -> p.area() > 0).toList();
    return halves.isEmpty() ? OptionalDouble.empty() : doubled(sigma(half, halves));
  }

  private static OptionalDouble doubled(OptionalDouble sigma) {
    return sigma.isEmpty()
        ? sigma
        : OptionalDouble.of(
            Math.sqrt(Math.max(0, 4 * square(sigma.getAsDouble()) - HALVING_VARIANCE)));
  }

  private static Rect half(Rect part) {
    return new Rect(part.x / 2, part.y / 2, part.width / 2, part.height / 2);
  }

  private static OptionalDouble finite(OptionalDouble value) {
    return Double.isFinite(value.getAsDouble()) ? value : OptionalDouble.empty();
  }

  private static double square(double value) {
    return value * value;
  }
}
