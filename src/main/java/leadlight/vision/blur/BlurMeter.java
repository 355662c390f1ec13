package leadlight.vision.blur;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import leadlight.vision.Shrink;
import org.opencv.core.Core;
import org.opencv.core.CvType;
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
   * @return empty if the part has too few clear edges, as flat or burnt-out parts have
   */
  public static OptionalDouble edgeSigmaPx(Frame frame, int x, int y, int widthPx, int heightPx) {
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
    int left = Math.max(0, x - CONTEXT_PX);
    int top = Math.max(0, y - CONTEXT_PX);
    int right = Math.min(frame.widthPx(), x + widthPx + CONTEXT_PX);
    int bottom = Math.min(frame.heightPx(), y + heightPx + CONTEXT_PX);
    try (MatScope scope = new MatScope()) {
      Mat view = scope.add(frame.mat().submat(top, bottom, left, right));
      Mat grey = scope.add(new Mat());
      Imgproc.cvtColor(view, grey, Imgproc.COLOR_BGR2GRAY);
      return sigma(grey, List.of(new Rect(x - left, y - top, widthPx, heightPx)));
    }
  }

  /**
   * The edge blur of a picture, where it has its strongest edges: a large picture is measured in
   * its busiest tiles, about half a megapixel of them, so that the cost stays below 0.1 s.
   *
   * @return empty if there are too few clear edges
   */
  public static OptionalDouble edgeSigmaPx(Frame frame) {
    try (MatScope scope = new MatScope()) {
      Mat grey = scope.add(new Mat());
      Imgproc.cvtColor(frame.mat(), grey, Imgproc.COLOR_BGR2GRAY);
      return sigma(grey, BusyTiles.of(grey));
    }
  }

  private static OptionalDouble sigma(Mat grey, List<Rect> parts) {
    EdgeSamples samples = new EdgeSamples();
    parts.forEach(part -> samples.add(grey, part));
    OptionalDouble sigma = samples.sigmaPx();
    if (sigma.isPresent() && sigma.getAsDouble() > HALVE_ABOVE_PX) {
      OptionalDouble coarse = halved(grey, parts);
      return coarse.isPresent() ? coarse : finite(sigma);
    }
    return sigma;
  }

  private static OptionalDouble halved(Mat grey, List<Rect> parts) {
    List<Rect> half = parts.stream().map(p -> half(p)).filter(p -> p.area() > 0).toList();
    if (half.isEmpty()) {
      return OptionalDouble.empty();
    }
    try (MatScope scope = new MatScope()) {
      Mat small = scope.add(new Mat());
      Size size = new Size((grey.cols() + 1) / 2, (grey.rows() + 1) / 2);
      Imgproc.resize(grey, small, size, 0, 0, Imgproc.INTER_AREA);
      OptionalDouble sigma = sigma(small, half);
      return sigma.isEmpty()
          ? sigma
          : OptionalDouble.of(
              Math.sqrt(Math.max(0, 4 * square(sigma.getAsDouble()) - HALVING_VARIANCE)));
    }
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

  /** The parts of a large picture where most happens. */
  private static final class BusyTiles {

    private static final int SIDE_PX = 256;
    private static final int TILES = 8;

    /** The map of business has this many pixels a tile's side: enough to see outlines. */
    private static final int MAP_PX = 32;

    private BusyTiles() {}

    /**
     * The whole of a picture of at most eight tiles, else its eight tiles of the steepest mean
     * gradient.
     */
    static List<Rect> of(Mat grey) {
      if ((long) grey.cols() * grey.rows() <= (long) TILES * SIDE_PX * SIDE_PX) {
        return List.of(new Rect(0, 0, grey.cols(), grey.rows()));
      }
      int across = (grey.cols() + SIDE_PX - 1) / SIDE_PX;
      int down = (grey.rows() + SIDE_PX - 1) / SIDE_PX;
      float[] business = business(grey, across, down);
      List<Integer> order = new ArrayList<>();
      for (int i = 0; i < business.length; i++) {
        order.add(i);
      }
      order.sort(Comparator.comparingDouble(i -> -business[i]));
      return order.stream()
          .limit(TILES)
          .map(i -> tile(grey, i % across, across, i / across, down))
          .toList();
    }

    private static float[] business(Mat grey, int across, int down) {
      try (MatScope scope = new MatScope()) {
        Mat small = scope.add(new Mat());
        Size map = new Size(across * MAP_PX, down * MAP_PX);
        Shrink.area(grey, small, map);
        Mat gx = scope.add(new Mat());
        Mat gy = scope.add(new Mat());
        Imgproc.Sobel(small, gx, CvType.CV_32F, 1, 0);
        Imgproc.Sobel(small, gy, CvType.CV_32F, 0, 1);
        Mat steep = scope.add(new Mat());
        Core.magnitude(gx, gy, steep);
        Mat mean = scope.add(new Mat());
        Imgproc.resize(steep, mean, new Size(across, down), 0, 0, Imgproc.INTER_AREA);
        float[] values = new float[across * down];
        mean.get(0, 0, values);
        return values;
      }
    }

    /** The grid is stretched to the picture, so that no tile is a sliver. */
    private static Rect tile(Mat grey, int column, int across, int row, int down) {
      int left = grey.cols() * column / across;
      int top = grey.rows() * row / down;
      return new Rect(
          left,
          top,
          grey.cols() * (column + 1) / across - left,
          grey.rows() * (row + 1) / down - top);
    }
  }
}
