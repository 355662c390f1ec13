package leadlight.leg.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.model.PointPx;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class LegPictureTest {

  private static final int SIZE = 200;
  private static final int OVERLAP = 16;
  private static final int AROUND = LegPicture.WIDTH - 2 * OVERLAP;

  private static FoundLeg leg() {
    return new FoundLeg(
        new LegRequest.Leg(1, 0, 0, 1, 2, 0.6, 1.6),
        1,
        new LandPlace(new PointPx(100, 100), 0.3, 50, 50),
        1);
  }

  private static byte[] pictureOf(byte[] rgb) {
    try (Frame frame = Frame.ofRgb(SIZE, SIZE, rgb)) {
      return LegPicture.of(frame, leg());
    }
  }

  private static byte[] even(int level) {
    byte[] rgb = new byte[3 * SIZE * SIZE];
    Arrays.fill(rgb, (byte) level);
    return rgb;
  }

  @Test
  void anEvenlyWhiteLandIsBurntOutAndAGreyOneIsNot() {
    assertThat(LegPicture.burntOut(pictureOf(even(255)), 250)).isEqualTo(1);
    assertThat(LegPicture.burntOut(pictureOf(even(249)), 250)).isZero();
  }

  @Test
  void theFirstColumnsRepeatTheLast() {
    byte[] rgb = even(0);
    for (int i = 0; i < rgb.length; i++) {
      rgb[i] = (byte) (i * 31 % 251);
    }
    byte[] picture = pictureOf(rgb);
    for (int line = 0; line < LegPicture.PLANES * LegPicture.HEIGHT; line++) {
      for (int column = 0; column < 2 * OVERLAP; column++) {
        int at = line * LegPicture.WIDTH + column;
        assertThat(picture[at]).isEqualTo(picture[at + AROUND]);
      }
    }
  }

  @Test
  void theFourthPlaneTellsHowManyPhotoPixelsLieBetweenTwoRows() {
    byte[] picture = pictureOf(even(9));
    int row = 3 * LegPicture.HEIGHT * LegPicture.WIDTH;
    int across = picture[row + OVERLAP] & 0xff;
    int along = picture[row + OVERLAP + AROUND / 4] & 0xff;
    // 0.3 and 0.8 mm of 50 pixels in 36 rows, 64 levels a pixel.
    assertThat(across).isBetween(26, 28);
    assertThat(along).isBetween(70, 72);
  }
}
