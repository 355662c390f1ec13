package leadlight.bench;

import java.util.List;
import java.util.function.BiConsumer;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/**
 * A picture of something else than a soldered row, drawn by chance with a seed.
 *
 * @param name for the table
 * @param draw draws over a picture
 */
record OtherPicture(String name, BiConsumer<Mat, Integer> draw) {

  private static final String TEXT = "River gauge 7: level, battery, log";

  static List<OtherPicture> all() {
    return List.of(
        new OtherPicture("clouds", OtherPicture::clouds),
        new OtherPicture("text", OtherPicture::text),
        new OtherPicture("stripes", OtherPicture::stripes),
        new OtherPicture("noise", OtherPicture::noise));
  }

  private static void noise(Mat picture, int seed) {
    Core.setRNGSeed(seed);
    Core.randu(picture, 0, 256);
  }

  private static void clouds(Mat picture, int seed) {
    Core.setRNGSeed(seed);
    Mat coarse = new Mat(8 + seed % 5 * 12, 8 + seed % 5 * 12, CvType.CV_8UC3);
    Core.randn(coarse, 120, 60);
    Imgproc.resize(coarse, picture, picture.size(), 0, 0, Imgproc.INTER_CUBIC);
    coarse.release();
  }

  private static void text(Mat picture, int seed) {
    picture.setTo(new Scalar(220, 225, 230));
    double size = 0.8 + 0.4 * (seed % 5);
    for (int y = 30; y < picture.rows() + 30; y += (int) (30 * size)) {
      Imgproc.putText(
          picture,
          TEXT + " " + TEXT + " " + TEXT,
          new Point(-seed * 7 % 50, y),
          Imgproc.FONT_HERSHEY_DUPLEX,
          size,
          new Scalar(40, 35, 30),
          (int) Math.ceil(size * 1.5),
          Imgproc.LINE_AA);
    }
  }

  /** Bright bars on green across the whole picture, a period of 16 to 48 pixels. */
  private static void stripes(Mat picture, int seed) {
    picture.setTo(new Scalar(40, 90, 30));
    int period = 16 + seed % 5 * 8;
    for (int x = seed % period; x < picture.cols(); x += period) {
      Imgproc.rectangle(
          picture,
          new Point(x, 0),
          new Point(x + period / 2 - 1, picture.rows()),
          new Scalar(190, 195, 200),
          -1);
    }
    Imgproc.GaussianBlur(picture, picture, new Size(0, 0), 1);
  }
}
