package leadlight.vision.blur;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ToneMeterTest {

  @AfterEach
  void everyFrameIsClosed() {
    assertThat(Frame.live()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 5, 10})
  void knownNoiseIsFoundWithinATenth(double sigma) {
    // Rounding to whole levels adds a variance of 1/12.
    double truth = Math.sqrt(sigma * sigma + 1 / 12.0);
    try (Frame frame = Steps.bar(1.5, 60, 180, sigma)) {
      assertThat(ToneMeter.noise(frame)).isCloseTo(truth, within(0.1 * truth));
    }
  }

  @Test
  void sharesAndQuantilesCountPixels() {
    byte[] rgb = new byte[100 * 10 * 3];
    for (int i = 0; i < rgb.length; i++) {
      int x = i / 3 % 100;
      rgb[i] = (byte) (x < 20 ? 0 : x < 70 ? 100 : 255);
    }
    try (Frame frame = Frame.ofRgb(100, 10, rgb);
        GreyScan scan = new GreyScan(frame)) {
      ToneMeter.Tones tones = ToneMeter.tones(scan);
      assertThat(tones.shareUpTo(5)).isCloseTo(0.2, within(1e-9));
      assertThat(tones.shareFrom(250)).isCloseTo(0.3, within(1e-9));
      assertThat(tones.quantile(0.1)).isZero();
      assertThat(tones.quantile(0.5)).isEqualTo(100);
      assertThat(tones.quantile(1)).isEqualTo(255);
    }
  }
}
