package leadlight.scene.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import leadlight.scene.render.Examples;
import org.junit.jupiter.api.Test;

/**
 * Lens and sensor against arithmetic: a linear filter's second moment is what it does to x squared
 * (moments of a convolution add, any text on probability), a magnification moves a point by its
 * share of the distance from the middle.
 */
class OpticsTest {

  private static final int WIDTH = 121;
  private static final int HEIGHT = 81;

  private static CameraSpec camera(CameraSpec.Lens lens) {
    CameraSpec c = Examples.camera(0, 0, 0, 0);
    return new CameraSpec(WIDTH, HEIGHT, 80, 3, -0.5, 0, c.tiltRad(), 100, lens, c.sensor());
  }

  private static float[][] spot(int x, int y) {
    float[][] light = new float[3][WIDTH * HEIGHT];
    for (float[] plane : light) {
      plane[y * WIDTH + x] = 1;
    }
    return light;
  }

  @Test
  void aMosaicBlursGreenByHalfAPixel() {
    float[][] light = new float[3][WIDTH * HEIGHT];
    for (int k = 0; k < WIDTH * HEIGHT; k++) {
      light[1][k] = k % WIDTH * (k % WIDTH);
    }
    float[] before = light[1].clone();
    new Mosaic(WIDTH, HEIGHT).pass(light);
    double sum = 0;
    int count = 0;
    for (int y = 2; y < 62; y++) {
      for (int x = 2; x < 102; x++) {
        sum += light[1][y * WIDTH + x] - before[y * WIDTH + x];
        count++;
      }
    }
    assertThat(Math.sqrt(sum / count)).isCloseTo(Mosaic.BLUR_PX, within(1e-3));
  }

  @Test
  void defocusHasTheWidthAskedFor() {
    float[][] light = spot(60, 40);
    new Optics(camera(new CameraSpec.Lens(0, 1.7, 0, 0, 0, 0, 0, 0))).pass(light);
    double second = 0;
    for (int k = 0; k < WIDTH * HEIGHT; k++) {
      second += light[1][k] * Math.pow(k % WIDTH - 60, 2);
    }
    assertThat(Math.sqrt(second)).isCloseTo(1.7, within(0.02));
    assertThat(sum(light[1])).isCloseTo(1, within(1e-4));
  }

  @Test
  void aFringeMovesRedOutAndBlueIn() {
    float[][] light = spot(110, 40);
    new Optics(camera(new CameraSpec.Lens(0, 0, 0, 0, 0, 0, 0, 0.01))).pass(light);
    assertThat(middle(light[0])).isCloseTo(60 + 50 * 1.01, within(0.02));
    assertThat(middle(light[1])).isEqualTo(110);
    assertThat(middle(light[2])).isCloseTo(60 + 50 / 1.01, within(0.02));
  }

  @Test
  void glowScattersLightAndLosesNone() {
    float[][] light = spot(60, 40);
    new Optics(camera(new CameraSpec.Lens(0, 0, 0, 0, 0, 0, 0.05, 0))).pass(light);
    assertThat(sum(light[1])).isCloseTo(1, within(0.01));
    assertThat(light[1][40 * WIDTH + 60]).isCloseTo(0.95f, within(0.001f));
    assertThat(light[1][40 * WIDTH + 70]).isPositive();
  }

  @Test
  void aLampToTheLeftMakesTheLeftBrighter() {
    float[][] light = new float[3][WIDTH * HEIGHT];
    Arrays.stream(light).forEach(plane -> Arrays.fill(plane, 1));
    new Optics(camera(new CameraSpec.Lens(0, 0, 0, 0, 0.2, 0, 0, 0))).pass(light);
    assertThat(light[1][40 * WIDTH]).isCloseTo(1.2f, within(0.01f));
    assertThat(light[1][40 * WIDTH + WIDTH - 1]).isCloseTo(0.8f, within(0.01f));
  }

  private static double sum(float[] plane) {
    double sum = 0;
    for (float value : plane) {
      sum += value;
    }
    return sum;
  }

  private static double middle(float[] plane) {
    double sum = 0;
    for (int k = 0; k < plane.length; k++) {
      sum += plane[k] * (k % WIDTH);
    }
    return sum / sum(plane);
  }
}
