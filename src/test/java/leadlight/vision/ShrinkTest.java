package leadlight.vision;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.vision.load.NativeLibrary;
import org.junit.jupiter.api.Test;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;

class ShrinkTest {

  /**
   * OpenCV's own averaging in one go is the reference; each of the three steps rounds by up to a
   * level.
   */
  @Test
  void shrinkingInStepsGivesTheAverageThatOneStepGives() {
    NativeLibrary.load();
    try (MatScope scope = new MatScope()) {
      Mat picture = scope.add(new Mat(600, 800, CvType.CV_8UC3));
      Core.randu(picture, 0, 255);
      Imgproc.GaussianBlur(picture, picture, new Size(0, 0), 4);
      Size size = new Size(110, 83);
      Mat steps = scope.add(new Mat());
      Shrink.area(picture, steps, size);
      Mat once = scope.add(new Mat());
      Imgproc.resize(picture, once, size, 0, 0, Imgproc.INTER_AREA);

      assertThat(steps.size()).isEqualTo(size);
      assertThat(Core.norm(steps, once, Core.NORM_INF)).isLessThanOrEqualTo(3);
      assertThat(Core.norm(steps, once, Core.NORM_L1) / (3 * size.area())).isLessThan(1);
    }
  }
}
