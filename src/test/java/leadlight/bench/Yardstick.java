package leadlight.bench;

import java.nio.file.Path;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;

/**
 * What a photo's cost is held against: OpenCV's decoding of the file and one template match over
 * the whole picture in colour (TM_CCOEFF_NORMED), the template a lead's place cut out of it, one
 * pitch wide and two long.
 */
public final class Yardstick {

  private Yardstick() {}

  /** Decodes and matches; seconds by the clock. */
  public static double seconds(Path file, int pitchPx) {
    long start = System.nanoTime();
    Mat picture = Imgcodecs.imread(file.toString());
    Rect lead =
        new Rect(
            picture.cols() / 2 - pitchPx / 2, picture.rows() / 2 - pitchPx, pitchPx, 2 * pitchPx);
    Mat template = picture.submat(lead);
    Mat match = new Mat();
    Imgproc.matchTemplate(picture, template, match, Imgproc.TM_CCOEFF_NORMED);
    match.release();
    template.release();
    picture.release();
    return (System.nanoTime() - start) / 1e9;
  }
}
