package leadlight.vision.blur;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.vision.Frame;
import leadlight.vision.MatScope;
import leadlight.vision.load.NativeLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

/** Outside reference: OpenCV's own grey picture, in one piece. */
class GreyScanTest {

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @ParameterizedTest
  @CsvSource({"300, 256", "301, 385", "64, 129", "17, 16"})
  void bandsTellWhatTheWholePictureTells(int width, int height) {
    NativeLibrary.load();
    Core.setRNGSeed(1);
    Mat picture = new Mat(height, width, CvType.CV_8UC3);
    Core.randu(picture, 0, 256);
    try (MatScope scope = new MatScope();
        Frame frame = new Frame(picture);
        GreyScan scan = new GreyScan(frame)) {
      Mat grey = scope.add(new Mat());
      Imgproc.cvtColor(picture, grey, Imgproc.COLOR_BGR2GRAY);
      Mat even = scope.add(grey.submat(0, height / 2 * 2, 0, width / 2 * 2));
      Mat half = scope.add(new Mat());
      Imgproc.resize(even, half, new Size(width / 2, height / 2), 0, 0, Imgproc.INTER_AREA);

      assertThat(Core.norm(scan.half(), half, Core.NORM_INF)).isZero();
      for (int level : new int[] {0, 90, 128, 255}) {
        Mat such = scope.add(new Mat());
        Core.inRange(grey, Scalar.all(level), Scalar.all(level), such);
        double share = Core.countNonZero(such) / (double) (width * height);
        assertThat(scan.shares()[level]).isCloseTo(share, within(1e-12));
      }
    }
  }
}
