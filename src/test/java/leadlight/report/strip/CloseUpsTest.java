package leadlight.report.strip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;
import org.junit.jupiter.api.Test;

class CloseUpsTest {

  /** Left half black, right half red. */
  private static Frame halves() {
    byte[] rgb = new byte[3 * 600 * 600];
    for (int i = 0; i < 600 * 600; i++) {
      rgb[3 * i] = (byte) (i % 600 < 300 ? 0 : 255);
    }
    return Frame.ofRgb(600, 600, rgb);
  }

  private static byte[] tile() {
    try (Frame photo = halves()) {
      Homography middle = new Homography(1, 0, 150, 0, 1, 150, 0, 0, 1);
      return CloseUps.tile(photo, middle, new PointPx(300, 300), List.of("a", "b"));
    }
  }

  @Test
  void aTileShowsThePieceOfThePhoto() {
    try (Frame tile = Codec.decode(tile()).orElseThrow()) {
      int left = 10 + 50;
      int right = 10 + 250;
      byte[] rgb = tile.rgb();
      assertThat(rgb[3 * (160 * tile.widthPx() + left)] & 0xff).isZero();
      assertThat(rgb[3 * (160 * tile.widthPx() + right)] & 0xff).isEqualTo(255);
      assertThat(rgb[3 * (160 * tile.widthPx() + right) + 1] & 0xff).isZero();
    }
  }

  @Test
  void aSheetHoldsAllTilesInRowsOfFive() {
    byte[] tile = tile();
    try (Frame one = Codec.decode(tile).orElseThrow();
        Frame five = Codec.decode(sheet(5, tile)).orElseThrow();
        Frame six = Codec.decode(sheet(6, tile)).orElseThrow()) {
      assertThat(five.widthPx()).isEqualTo(5 * one.widthPx());
      assertThat(six.widthPx()).isEqualTo(five.widthPx());
      assertThat(six.heightPx() - five.heightPx()).isEqualTo(one.heightPx());
    }
  }

  private static byte[] sheet(int count, byte[] tile) {
    return CloseUps.sheet("title", Collections.nCopies(count, tile));
  }

  @Test
  void theBytesAreTheSameEachTime() {
    assertThat(tile()).isEqualTo(tile());
  }
}
