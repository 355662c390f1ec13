package leadlight.vision;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.vision.load.NativeLibrary;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;

class FrameTest {

  @BeforeAll
  static void withOpenCv() {
    NativeLibrary.load();
  }

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  private static Frame picture(int width, int height) {
    Core.setRNGSeed(1);
    Mat mat = new Mat(height, width, CvType.CV_8UC3);
    Core.randu(mat, 0, 256);
    return new Frame(mat);
  }

  @Test
  void halvesAreMadeOnceWhoeverAsks() {
    try (Frame frame = picture(640, 480);
        Frame half = frame.shrunk(0.5)) {
      assertThat(frame.halved(1)).isSameAs(frame.halved(1));
      assertThat(half.mat().dataAddr()).isEqualTo(frame.halved(1).dataAddr());
    }
  }

  @Test
  void aHalfOutlivesItsFrame() {
    Frame frame = picture(64, 48);
    byte[] before;
    try (Frame half = frame.shrunk(0.5)) {
      before = half.rgb();
      frame.close();
      assertThat(half.rgb()).isEqualTo(before);
    }
  }

  @ParameterizedTest
  @CsvSource({"640, 480, 0.1", "641, 479, 0.1", "641, 480, 0.3", "640, 481, 0.45"})
  void shrinkingByWayOfTheHalvesGivesWhatShrinkingAloneGives(int width, int height, double factor) {
    try (MatScope scope = new MatScope();
        Frame frame = picture(width, height);
        Frame small = frame.shrunk(factor)) {
      Mat alone = scope.add(new Mat());
      Size size = new Size(Math.rint(factor * width), Math.rint(factor * height));
      Shrink.area(frame.mat(), alone, size);

      assertThat(Core.norm(small.mat(), alone, Core.NORM_INF)).isZero();
    }
  }
}
