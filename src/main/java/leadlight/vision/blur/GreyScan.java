package leadlight.vision.blur;

import java.util.List;
import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import leadlight.vision.Shrink;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfFloat;
import org.opencv.core.MatOfInt;
import org.opencv.core.Rect;
import org.opencv.imgproc.Imgproc;

/**
 * A picture's grey levels, 0.299 red + 0.587 green + 0.114 blue (ITU-R BT.601), seen once, band by
 * band, so that they are never held in full: how often each level stands in it, and the picture in
 * half size.
 */
public final class GreyScan implements AutoCloseable {

  static final int LEVELS = 256;

  /** Even, so that no two rows that are averaged lie in two bands. */
  private static final int BAND_ROWS = 128;

  private final Frame frame;
  private final double[] shares = new double[LEVELS];
  private final Mat half;

  /** Looks at a picture, which must stay open as long as this. */
  public GreyScan(Frame frame) {
    this.frame = frame;
    Mat picture = frame.mat();
    int width = picture.cols() / 2;
    int height = picture.rows() / 2;
    half = width > 0 && height > 0 ? new Mat(height, width, CvType.CV_8U) : new Mat();
    long[] counts = new long[LEVELS];
    for (int top = 0; top < picture.rows(); top += BAND_ROWS) {
      band(top, Math.min(picture.rows(), top + BAND_ROWS), counts);
    }
    for (int i = 0; i < LEVELS; i++) {
      shares[i] = counts[i] / ((double) picture.rows() * picture.cols());
    }
  }

  private void band(int top, int bottom, long[] counts) {
    try (MatScope scope = new MatScope()) {
      Mat grey = grey(new Rect(0, top, frame.widthPx(), bottom - top), scope);
      Mat found = scope.add(new Mat());
      Imgproc.calcHist(
          List.of(grey),
          scope.add(new MatOfInt(0)),
          scope.add(new Mat()),
          found,
          scope.add(new MatOfInt(LEVELS)),
          scope.add(new MatOfFloat(0, LEVELS)));
      float[] values = new float[LEVELS];
      found.get(0, 0, values);
      for (int i = 0; i < LEVELS; i++) {
        counts[i] += (long) values[i];
      }
      if (bottom - top > 1 && !half.empty()) {
        Shrink.halve(grey, scope.add(half.submat(top / 2, bottom / 2, 0, half.cols())));
      }
    }
  }

  /** The grey levels of a part, in the scope. */
  Mat grey(Rect part, MatScope scope) {
    Mat grey = scope.add(new Mat());
    Mat view = scope.add(frame.mat().submat(part));
    Imgproc.cvtColor(view, grey, Imgproc.COLOR_BGR2GRAY);
    return grey;
  }

  /** The whole picture. */
  Rect all() {
    return new Rect(0, 0, frame.widthPx(), frame.heightPx());
  }

  /** Share of the pixels at each level. */
  double[] shares() {
    return shares.clone();
  }

  /** The picture in half size; of an odd side the last pixel is left out. */
  Mat half() {
    return half;
  }

  @Override
  public void close() {
    MatScope.release(half);
  }
}
