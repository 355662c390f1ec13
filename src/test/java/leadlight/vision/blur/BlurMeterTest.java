package leadlight.vision.blur;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Outside reference: blurs made with OpenCV's GaussianBlur on slanted steps. */
class BlurMeterTest {

  /** Variance of a square pixel of side 1. */
  private static final double PIXEL_VARIANCE = 1 / 12.0;

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, 0.7, 1, 1.5, 2, 3, 4, 6, 8})
  void aKnownBlurIsFound(double sigmaPx) {
    double truth = Math.sqrt(sigmaPx * sigmaPx + PIXEL_VARIANCE);
    try (Frame frame = Steps.bar(sigmaPx, 60, 180, 0)) {
      assertThat(sigma(frame)).hasValueCloseTo(truth, within(0.08 * truth));
    }
  }

  @ParameterizedTest
  @CsvSource({"0.5, 2, 0.1", "1, 2, 0.1", "2, 2, 0.1", "0.5, 5, 0.2", "1, 5, 0.2", "2, 5, 0.2"})
  void noiseLowersItButLittle(double sigmaPx, double noise, double part) {
    double truth = Math.sqrt(sigmaPx * sigmaPx + PIXEL_VARIANCE);
    try (Frame frame = Steps.bar(sigmaPx, 60, 180, noise)) {
      assertThat(sigma(frame)).hasValueCloseTo(truth, within(part * truth));
    }
  }

  @Test
  void theHeightOfTheStepDoesNotMatter() {
    try (Frame low = Steps.bar(1.5, 100, 140, 0);
        Frame high = Steps.bar(1.5, 20, 240, 0)) {
      double sigma = sigma(high).orElseThrow();
      assertThat(sigma(low)).hasValueCloseTo(sigma, within(0.05));
    }
  }

  @Test
  void aPartIsMeasuredAlone() {
    try (Frame bar = Steps.bar(1.5, 60, 180, 0);
        Frame frame = Steps.alone(bar, 1500)) {
      double whole = sigma(bar).orElseThrow();
      assertThat(BlurMeter.edgeSigmaPx(frame, 1340, 1340, 160, 160, 0))
          .hasValueCloseTo(whole, within(0.1));
      assertThat(BlurMeter.edgeSigmaPx(frame, 1365, 1400, 30, 40, 0))
          .hasValueCloseTo(whole, within(0.1));
      assertThat(BlurMeter.edgeSigmaPx(frame, 0, 0, 400, 300, 0)).isEmpty();
    }
  }

  @Test
  void aLargePictureIsMeasuredWhereItsEdgesAre() {
    try (Frame bar = Steps.bar(1.5, 60, 180, 0);
        Frame frame = Steps.alone(bar, 3000)) {
      double whole = sigma(bar).orElseThrow();
      assertThat(sigma(frame)).hasValueCloseTo(whole, within(0.1));
    }
  }

  @Test
  void stretchingWidensEdgesByItsFactor() {
    // 800 x 600 sold as full HD: 2.25 times in height.
    try (Frame sharp = Steps.bar(0.6, 60, 180, 0);
        Frame stretched = Steps.stretched(sharp, 2.25)) {
      double before = sigma(sharp).orElseThrow();
      assertThat(sigma(stretched).orElseThrow() / before).isCloseTo(2.25, within(0.25));
    }
  }

  @Test
  void aFlatOrBurntOutPictureHasNoEdges() {
    try (Frame flat = Steps.bar(1, 120, 120, 3);
        Frame burnt = Steps.bar(1, 255, 255, 0)) {
      assertThat(sigma(flat)).isEmpty();
      assertThat(sigma(burnt)).isEmpty();
    }
  }

  @Test
  void aPartOutsideThePictureIsRefused() {
    try (Frame frame = Steps.bar(1, 60, 180, 0)) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> BlurMeter.edgeSigmaPx(frame, 100, 0, 61, 10, 0))
          .withMessageContaining("must lie within 160 x 160");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.5, 3, 6})
  void aHalvedPictureTellsTheSameBlur(double sigmaPx) {
    try (Frame frame = Steps.bar(sigmaPx, 60, 180, 0)) {
      int width = frame.widthPx();
      int height = frame.heightPx();
      double full = BlurMeter.edgeSigmaPx(frame, 0, 0, width, height, 0).orElseThrow();
      assertThat(BlurMeter.edgeSigmaPx(frame, 0, 0, width, height, 1))
          .hasValueCloseTo(full, within(0.08 * full));
    }
  }

  private static OptionalDouble sigma(Frame frame) {
    try (GreyScan scan = new GreyScan(frame)) {
      return BlurMeter.edgeSigmaPx(scan);
    }
  }
}
