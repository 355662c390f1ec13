package leadlight.vision.blur;

import java.util.Arrays;
import java.util.OptionalDouble;
import leadlight.vision.MatScope;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * Edge points of a grey picture with their gradient at a fine and a coarse scale.
 *
 * <p>A step blurred by a Gaussian of sigma has, under a Gaussian derivative of variance v, a peak
 * gradient that goes as 1 / sqrt(sigma^2 + v). The ratio R of two scales v1 < v2 therefore gives
 * sigma^2 = (v2 - R^2 v1) / (R^2 - 1), whatever the step's height (Zhuo and Sim 2011, Pattern
 * Recognition 44, 1852-1858, doi 10.1016/j.patcog.2011.03.009, with two scales in place of one
 * re-blur).
 */
final class EdgeSamples {

  private static final double FINE_PX = 0.8;
  private static final double COARSE_PX = 1.6;

  /** Variance that the difference of the two neighbours adds: a box of 2 px, 2^2 / 12. */
  private static final double DIFFERENCE_VARIANCE = 4 / 12.0;

  private static final double FINE_VARIANCE = FINE_PX * FINE_PX + DIFFERENCE_VARIANCE;
  private static final double COARSE_VARIANCE = COARSE_PX * COARSE_PX + DIFFERENCE_VARIANCE;

  /** Where the coarse kernel is cut off by OpenCV: 4 sigma. */
  private static final int MARGIN_PX = 7;

  /** A clipped edge looks sharper than it is; JPEG leaves clipped areas a little below 255. */
  private static final double CLIPPED = 253;

  /**
   * Grey levels a pixel. Noise of 5 levels makes a coarse gradient of 5 / (sqrt(8 pi) 1.6^2) = 0.4,
   * so that five times its spread is no edge.
   */
  private static final float LEAST_GRADIENT = 2;

  /**
   * The strongest fifth, as tuned on rendered pictures of known blur: nearly all are outlines;
   * weaker ones are shading, soft by itself.
   */
  private static final double STRONGEST = 0.20;

  private static final int LEAST_POINTS = 12;

  private float[] gradients = new float[1024];
  private float[] ratios = new float[1024];
  private int count;

  /** Adds the edge points within a part of a picture of type CV_8U. */
  void add(Mat grey, Rect part) {
    try (MatScope scope = new MatScope()) {
      Rect wide = grown(part, grey.size());
      Mat piece = scope.add(grey.submat(wide));
      Mat deep = scope.add(new Mat());
      piece.convertTo(deep, CvType.CV_32F);
      Gradient fine = Gradient.of(deep, FINE_PX);
      Gradient coarse = Gradient.of(deep, COARSE_PX);
      byte[] clipped = clipped(piece, scope);
      Rect inner = inner(part, grey.size(), wide);
      for (int y = inner.y; y < inner.y + inner.height; y++) {
        for (int x = inner.x; x < inner.x + inner.width; x++) {
          int i = y * wide.width + x;
          if (coarse.isRidge(i, LEAST_GRADIENT) && clipped[i] == 0) {
            add(coarse.length()[i], fine.length()[i] / coarse.length()[i]);
          }
        }
      }
    }
  }

  private void add(float gradient, float ratio) {
    if (count == gradients.length) {
      gradients = Arrays.copyOf(gradients, 2 * count);
      ratios = Arrays.copyOf(ratios, 2 * count);
    }
    gradients[count] = gradient;
    ratios[count++] = ratio;
  }

  /** The median over the strongest edge points, in pixels; empty if there are too few. */
  OptionalDouble sigmaPx() {
    float[] sorted = Arrays.copyOf(gradients, count);
    Arrays.sort(sorted);
    int taken = (int) Math.max(LEAST_POINTS, Math.round(STRONGEST * count));
    if (count < taken) {
      return OptionalDouble.empty();
    }
    float least = sorted[count - taken];
    double[] strong = new double[count];
    int n = 0;
    for (int i = 0; i < count; i++) {
      if (gradients[i] >= least) {
        strong[n++] = ratios[i];
      }
    }
    Arrays.sort(strong, 0, n);
    return OptionalDouble.of(sigma(strong[n / 2]));
  }

  private static double sigma(double ratio) {
    double square = ratio * ratio;
    if (square <= 1) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.sqrt(Math.max(0, (COARSE_VARIANCE - square * FINE_VARIANCE) / (square - 1)));
  }

  /** Non-zero where a pixel lies near a clipped one. */
  private static byte[] clipped(Mat piece, MatScope scope) {
    Mat mask = scope.add(new Mat());
    Core.inRange(piece, Scalar.all(CLIPPED), Scalar.all(255), mask);
    Mat kernel = scope.add(Mat.ones(MARGIN_PX, MARGIN_PX, CvType.CV_8U));
    Imgproc.dilate(mask, mask, kernel);
    byte[] bytes = new byte[mask.rows() * mask.cols()];
    mask.get(0, 0, bytes);
    return bytes;
  }

  /** A part and what is needed around it, within the picture. */
  static Rect grown(Rect part, Size within) {
    int left = Math.max(0, part.x - MARGIN_PX);
    int top = Math.max(0, part.y - MARGIN_PX);
    int right = Math.min((int) within.width, part.x + part.width + MARGIN_PX);
    int bottom = Math.min((int) within.height, part.y + part.height + MARGIN_PX);
    return new Rect(left, top, right - left, bottom - top);
  }

  /** The part, less what lies too near the picture's border, in the wide piece's pixels. */
  private static Rect inner(Rect part, Size picture, Rect wide) {
    int left = Math.max(part.x, MARGIN_PX);
    int top = Math.max(part.y, MARGIN_PX);
    int right = Math.min(part.x + part.width, (int) picture.width - MARGIN_PX);
    int bottom = Math.min(part.y + part.height, (int) picture.height - MARGIN_PX);
    return new Rect(
        left - wide.x, top - wide.y, Math.max(0, right - left), Math.max(0, bottom - top));
  }

  /**
   * A picture's gradient after Gaussian smoothing, in grey levels a pixel.
   *
   * @param width columns
   * @param x component along x, row by row
   * @param y component along y
   * @param length of the gradient
   */
  record Gradient(int width, float[] x, float[] y, float[] length) {

    static Gradient of(Mat deep, double sigmaPx) {
      try (MatScope scope = new MatScope()) {
        Mat smooth = scope.add(new Mat());
        Imgproc.GaussianBlur(deep, smooth, new Size(), sigmaPx, 0, Core.BORDER_REPLICATE);
        Mat gx = scope.add(new Mat());
        Mat gy = scope.add(new Mat());
        Mat both = scope.add(new Mat());
        Imgproc.Sobel(smooth, gx, CvType.CV_32F, 1, 0, 1, 0.5);
        Imgproc.Sobel(smooth, gy, CvType.CV_32F, 0, 1, 1, 0.5);
        Core.magnitude(gx, gy, both);
        return new Gradient(deep.cols(), floats(gx), floats(gy), floats(both));
      }
    }

    /**
     * Whether the gradient at an index not on the border is at least {@code least} and larger than
     * before and behind it, along the axis it is nearer to.
     */
    boolean isRidge(int i, float least) {
      if (length[i] < least) {
        return false;
      }
      int step = Math.abs(x[i]) >= Math.abs(y[i]) ? 1 : width;
      return length[i] >= length[i - step] && length[i] > length[i + step];
    }

    private static float[] floats(Mat mat) {
      float[] values = new float[mat.rows() * mat.cols()];
      mat.get(0, 0, values);
      return values;
    }
  }
}
