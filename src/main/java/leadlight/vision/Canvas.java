package leadlight.vision;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfInt;
import org.opencv.core.MatOfPoint;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * A picture to draw on, in native memory; close it after use. Colours are 0xRRGGBB. What lies
 * outside the canvas is left out. Drawing needs no window system and no fonts of the machine, and
 * gives the same bytes everywhere.
 */
public final class Canvas implements AutoCloseable {

  /** Subdivisions of a pixel when the edges of an outline are smoothed; each way. */
  private static final int FINE = 8;

  /** Beyond this reduction, area averaging goes first: plain interpolation would alias. */
  private static final double PLAIN_REDUCTION = 1.5;

  private final Mat mat;

  /** An empty canvas. */
  public Canvas(int widthPx, int heightPx, int colour) {
    NativeLibrary.load();
    this.mat = new Mat(heightPx, widthPx, CvType.CV_8UC3, scalar(colour));
  }

  /** Columns. */
  public int widthPx() {
    return mat.cols();
  }

  /** Rows. */
  public int heightPx() {
    return mat.rows();
  }

  /** Fills a rectangle; edges are sharp. */
  public void fillRect(int x, int y, int widthPx, int heightPx, int colour) {
    Rect part = clipped(x, y, x + widthPx, y + heightPx);
    if (!part.empty()) {
      try (MatScope scope = new MatScope()) {
        scope.add(mat.submat(part)).setTo(scalar(colour));
      }
    }
  }

  /**
   * Fills outlines with smoothed edges, by the even-odd rule; an edge lies at most an eighth of a
   * pixel too far outside.
   *
   * @param outlines closed outlines, each x0, y0, x1, y1 ...; here (0, 0) is the canvas' corner,
   *     not the middle of its first pixel
   */
  public void fill(List<double[]> outlines, int colour) {
    Rect part = bounds(outlines);
    if (part.empty()) {
      return;
    }
    try (MatScope scope = new MatScope()) {
      Mat cover = cover(outlines, part, scope);
      Mat rest = scope.add(new Mat());
      Core.bitwise_not(cover, rest);
      Mat target = scope.add(mat.submat(part));
      Mat ink = scope.add(new Mat(part.size(), CvType.CV_8UC3, scalar(colour)));
      Core.multiply(ink, cover, ink, 1.0 / 255);
      Core.multiply(target, rest, target, 1.0 / 255);
      Core.add(target, ink, target);
    }
  }

  private static Mat cover(List<double[]> outlines, Rect part, MatScope scope) {
    Mat fine = scope.add(Mat.zeros(part.height * FINE, part.width * FINE, CvType.CV_8U));
    List<MatOfPoint> polygons = new ArrayList<>();
    for (double[] outline : outlines) {
      Point[] points = new Point[outline.length / 2];
      for (int i = 0; i < points.length; i++) {
        points[i] =
            new Point(
                Math.rint((outline[2 * i] - part.x) * FINE - 0.5),
                Math.rint((outline[2 * i + 1] - part.y) * FINE - 0.5));
      }
      polygons.add(scope.add(new MatOfPoint(points)));
    }
    Imgproc.fillPoly(fine, polygons, new Scalar(255));
    Mat one = scope.add(new Mat());
    Imgproc.resize(fine, one, part.size(), 0, 0, Imgproc.INTER_AREA);
    Mat three = scope.add(new Mat());
    Imgproc.cvtColor(one, three, Imgproc.COLOR_GRAY2BGR);
    return three;
  }

  private Rect bounds(List<double[]> outlines) {
    double left = Double.MAX_VALUE;
    double top = Double.MAX_VALUE;
    double right = -Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (double[] outline : outlines) {
      for (int i = 0; i < outline.length; i += 2) {
        left = Math.min(left, outline[i]);
        right = Math.max(right, outline[i]);
        top = Math.min(top, outline[i + 1]);
        bottom = Math.max(bottom, outline[i + 1]);
      }
    }
    return clipped(
        Math.floor(left) - 1, Math.floor(top) - 1, Math.ceil(right) + 1, Math.ceil(bottom) + 1);
  }

  private Rect clipped(double left, double top, double right, double bottom) {
    int x = (int) Math.max(0, left);
    int y = (int) Math.max(0, top);
    int width = (int) Math.min(mat.cols(), right) - x;
    int height = (int) Math.min(mat.rows(), bottom) - y;
    return width > 0 && height > 0 ? new Rect(x, y, width, height) : new Rect();
  }

  /** Pastes a whole picture, stretched to the given size; the target must lie on the canvas. */
  public void paste(Frame picture, int x, int y, int widthPx, int heightPx) {
    try (MatScope scope = new MatScope()) {
      Mat target = scope.add(mat.submat(new Rect(x, y, widthPx, heightPx)));
      boolean reduced = widthPx < picture.widthPx();
      Imgproc.resize(
          picture.mat(),
          target,
          target.size(),
          0,
          0,
          reduced ? Imgproc.INTER_AREA : Imgproc.INTER_CUBIC);
    }
  }

  /**
   * Pastes a straightened piece of a picture; the target must lie on the canvas. Places outside the
   * picture keep the canvas' colour.
   *
   * @param toPicture from pixels of the target (its first pixel's middle is (0, 0)) to pixels of
   *     the picture
   */
  public void pasteStraightened(
      Frame picture, Homography toPicture, int x, int y, int widthPx, int heightPx) {
    Rect seen = SeenPart.of(picture, toPicture, widthPx, heightPx);
    if (seen.empty()) {
      return;
    }
    try (MatScope scope = new MatScope()) {
      Mat source = scope.add(picture.mat().submat(seen));
      double reduction =
          Math.sqrt(SeenPart.area(toPicture, widthPx, heightPx) / widthPx / heightPx);
      double factor = reduction > PLAIN_REDUCTION ? 1 / reduction : 1;
      if (factor < 1) {
        Mat small = scope.add(new Mat());
        Imgproc.resize(source, small, new Size(), factor, factor, Imgproc.INTER_AREA);
        source = small;
      }
      Homography intoSource =
          new Homography(
              factor,
              0,
              factor * (0.5 - seen.x) - 0.5,
              0,
              factor,
              factor * (0.5 - seen.y) - 0.5,
              0,
              0,
              1);
      Mat map = scope.add(new Mat(3, 3, CvType.CV_64F));
      map.put(0, 0, intoSource.after(toPicture).rowMajor());
      Mat target = scope.add(mat.submat(new Rect(x, y, widthPx, heightPx)));
      Imgproc.warpPerspective(
          source,
          target,
          map,
          target.size(),
          (reduction < 1 ? Imgproc.INTER_CUBIC : Imgproc.INTER_LINEAR) | Imgproc.WARP_INVERSE_MAP,
          Core.BORDER_TRANSPARENT);
    }
  }

  /**
   * The canvas as a PNG file. OpenCV's own choice, one filter for all lines and the least
   * compression, takes half the time of any other and gives files half as large again.
   */
  public byte[] png() {
    try (MatScope scope = new MatScope()) {
      MatOfByte file = scope.add(new MatOfByte());
      if (!Imgcodecs.imencode(".png", mat, file)) {
        throw new IllegalStateException("the picture could not be encoded");
      }
      return file.toArray();
    }
  }

  /**
   * The canvas as a JPEG file.
   *
   * @param quality 1 to 100, as the format's encoders have it
   */
  public byte[] jpeg(int quality) {
    try (MatScope scope = new MatScope()) {
      MatOfByte file = scope.add(new MatOfByte());
      MatOfInt options = scope.add(new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, quality));
      if (!Imgcodecs.imencode(".jpg", mat, file, options)) {
        throw new IllegalStateException("the picture could not be encoded");
      }
      return file.toArray();
    }
  }

  private static Scalar scalar(int colour) {
    return new Scalar(colour & 0xff, (colour >> 8) & 0xff, (colour >> 16) & 0xff);
  }

  @Override
  public void close() {
    MatScope.release(mat);
  }
}
