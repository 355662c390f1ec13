package leadlight.vision.blur;

import java.util.Random;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/** Pictures of a slanted step (the idea of ISO 12233) whose blur is known. */
final class Steps {

  private static final int FINER = 8;
  private static final int SIDE = 160;
  private static final double SLANT = Math.tan(Math.toRadians(5));

  private Steps() {}

  /**
   * A light bar on a dark ground: drawn 8 times finer, blurred there by OpenCV's GaussianBlur, then
   * averaged down, which adds the pixel's own 1 / sqrt(12) px.
   */
  static Frame bar(double sigmaPx, int dark, int light, double noise) {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      Mat fine = scope.add(new Mat(SIDE * FINER, SIDE * FINER, CvType.CV_32F));
      for (int y = 0; y < fine.rows(); y++) {
        float[] row = new float[fine.cols()];
        for (int x = 0; x < row.length; x++) {
          double across = x - fine.cols() / 2.0 + SLANT * (y - fine.rows() / 2.0);
          double along = y - fine.rows() / 2.0 - SLANT * (x - fine.cols() / 2.0);
          boolean inside =
              Math.abs(across) < fine.cols() / 4.0 && Math.abs(along) < fine.rows() * 0.375;
          row[x] = inside ? light : dark;
        }
        fine.put(y, 0, row);
      }
      if (sigmaPx > 0) {
        Imgproc.GaussianBlur(fine, fine, new Size(), sigmaPx * FINER, 0, Core.BORDER_REPLICATE);
      }
      Mat grey = scope.add(new Mat());
      Imgproc.resize(fine, grey, new Size(SIDE, SIDE), 0, 0, Imgproc.INTER_AREA);
      return frame(grey, noise, scope);
    }
  }

  private static Frame frame(Mat grey, double noise, MatScope scope) {
    float[] values = new float[grey.rows() * grey.cols()];
    grey.get(0, 0, values);
    Random random = new Random(1);
    for (int i = 0; i < values.length; i++) {
      values[i] += (float) (noise * random.nextGaussian());
    }
    grey.put(0, 0, values);
    Mat bytes = scope.add(new Mat());
    grey.convertTo(bytes, CvType.CV_8U);
    Mat bgr = new Mat();
    Imgproc.cvtColor(bytes, bgr, Imgproc.COLOR_GRAY2BGR);
    return new Frame(bgr);
  }

  /** A copy stretched as cameras do that promise more pixels than they have. */
  static Frame stretched(Frame frame, double factor) {
    Mat large = new Mat();
    Imgproc.resize(frame.mat(), large, new Size(), factor, factor, Imgproc.INTER_CUBIC);
    return new Frame(large);
  }

  /** A large flat picture with one bar in a corner. */
  static Frame alone(Frame bar, int side) {
    Mat large = new Mat(side, side, CvType.CV_8UC3, new Scalar(60, 60, 60));
    Mat corner = large.submat(side - SIDE, side, side - SIDE, side);
    bar.mat().copyTo(corner);
    corner.release();
    return new Frame(large);
  }
}
