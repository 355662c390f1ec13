package leadlight.vision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlight.model.Homography;
import leadlight.vision.decode.Codec;
import org.junit.jupiter.api.Test;

class CanvasTest {

  private static final int RED = 0xff0000;

  @Test
  void an_outline_covers_pixels_by_their_share() {
    try (Canvas canvas = new Canvas(8, 8, 0x000000)) {
      canvas.fill(List.of(new double[] {2, 2, 4.5, 2, 4.5, 5, 2, 5}), RED);
      try (Frame drawn = frame(canvas)) {
        assertThat(red(drawn, 2, 2)).isEqualTo(255);
        assertThat(red(drawn, 4, 3)).as("half covered").isBetween(110, 160);
        assertThat(red(drawn, 5, 3)).isZero();
        assertThat(red(drawn, 3, 5)).as("an eighth may spill").isLessThanOrEqualTo(32);
        assertThat(red(drawn, 3, 6)).isZero();
      }
    }
  }

  @Test
  void an_outline_within_another_is_a_hole() {
    double[] outer = {1, 1, 9, 1, 9, 9, 1, 9};
    double[] hole = {3, 3, 7, 3, 7, 7, 3, 7};
    try (Canvas canvas = new Canvas(10, 10, 0x000000)) {
      canvas.fill(List.of(outer, hole), RED);
      try (Frame drawn = frame(canvas)) {
        assertThat(red(drawn, 1, 5)).isEqualTo(255);
        assertThat(red(drawn, 5, 5)).isZero();
      }
    }
  }

  @Test
  void what_lies_outside_is_left_out() {
    try (Canvas canvas = new Canvas(4, 4, 0x000000)) {
      canvas.fillRect(-5, -5, 7, 7, RED);
      canvas.fillRect(40, 40, 5, 5, RED);
      canvas.fill(List.of(new double[] {-9, -9, -3, -9, -3, -3}), RED);
      try (Frame drawn = frame(canvas)) {
        assertThat(red(drawn, 1, 1)).isEqualTo(255);
        assertThat(red(drawn, 2, 2)).isZero();
      }
    }
  }

  @Test
  void a_straightened_piece_shows_the_mapped_pixels_and_leaves_the_outside_alone() {
    byte[] rgb = new byte[3 * 6 * 6];
    rgb[3 * (6 * 2 + 4)] = (byte) 255;
    try (Frame picture = Frame.ofRgb(6, 6, rgb);
        Canvas canvas = new Canvas(12, 12, 0x808080)) {
      // A quarter turn: (i, j) of the piece shows (5 - j, i) of the picture.
      canvas.pasteStraightened(picture, new Homography(0, -1, 5, 1, 0, 0, 0, 0, 1), 3, 3, 8, 6);
      try (Frame drawn = frame(canvas)) {
        assertThat(red(drawn, 3 + 2, 3 + 1)).isEqualTo(255);
        assertThat(red(drawn, 3, 3)).isZero();
        assertThat(red(drawn, 3 + 7, 3)).as("beyond the picture").isEqualTo(0x80);
      }
    }
  }

  @Test
  void a_much_reduced_piece_keeps_the_mean_brightness() {
    byte[] rgb = new byte[3 * 400 * 400];
    for (int i = 0; i < 400 * 400; i++) {
      rgb[3 * i] = (byte) ((i % 400) % 2 == 0 ? 255 : 0);
    }
    try (Frame picture = Frame.ofRgb(400, 400, rgb);
        Canvas canvas = new Canvas(40, 40, 0x000000)) {
      double step = 10;
      canvas.pasteStraightened(
          picture, new Homography(step, 0, 4.5, 0, step, 4.5, 0, 0, 1), 0, 0, 40, 40);
      try (Frame drawn = frame(canvas)) {
        for (int x = 2; x < 38; x++) {
          assertThat(red(drawn, x, 20)).as("stripes would alias").isBetween(120, 136);
        }
      }
    }
  }

  private static Frame frame(Canvas canvas) {
    return Codec.decode(canvas.png()).orElseThrow();
  }

  private static int red(Frame frame, int x, int y) {
    return frame.rgb()[3 * (y * frame.widthPx() + x)] & 0xff;
  }
}
