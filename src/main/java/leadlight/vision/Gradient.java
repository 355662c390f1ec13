package leadlight.vision;

import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

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
