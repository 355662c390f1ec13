package leadlight.vision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leadlight.model.Homography;
import org.junit.jupiter.api.Test;

class StackTest {

  private static final int WIDTH = 160;
  private static final int HEIGHT = 120;
  private static final Stack.Settings SETTINGS = new Stack.Settings(0.8, 5, 1, 2);

  /** Light of a board as a formula: soft stripes and a slope, 40 to 200. */
  private static double light(double x, double y, double softness) {
    double stripes = Math.sin(0.55 * x) * Math.exp(-softness * softness * 0.15);
    return 120 + 50 * stripes + 20 * Math.sin(0.07 * y);
  }

  private interface Softness {
    double at(int x);
  }

  private static Frame frame(double shift, double noise, long seed, Softness soft) {
    Random random = new Random(seed);
    byte[] rgb = new byte[3 * WIDTH * HEIGHT];
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double level = light(x - shift, y, soft.at(x)) + noise * random.nextGaussian();
        for (int c = 0; c < 3; c++) {
          rgb[3 * (y * WIDTH + x) + c] = (byte) Math.round(Math.max(0, Math.min(255, level)));
        }
      }
    }
    return Frame.ofRgb(WIDTH, HEIGHT, rgb);
  }

  private static double error(Frame frame) {
    byte[] rgb = frame.rgb();
    double sum = 0;
    int n = 0;
    for (int y = 10; y < HEIGHT - 10; y++) {
      for (int x = 10; x < WIDTH - 10; x++) {
        double off = (rgb[3 * (y * WIDTH + x)] & 0xff) - light(x, y, 0);
        sum += off * off;
        n++;
      }
    }
    return Math.sqrt(sum / n);
  }

  private static Frame stack(List<Frame> frames, double... shifts) {
    List<Stack.Layer> layers = new ArrayList<>();
    for (int i = 0; i < frames.size(); i++) {
      layers.add(new Stack.Layer(frames.get(i), new Homography(1, 0, shifts[i], 0, 1, 0, 0, 0, 1)));
    }
    return Stack.of(layers, SETTINGS);
  }

  @Test
  void noiseOfFiveFramesFallsByNearlyTheRootOfFive() {
    double[] shifts = {0, 0.4, -1.3, 2, 0.7};
    List<Frame> frames = new ArrayList<>();
    for (int i = 0; i < shifts.length; i++) {
      frames.add(frame(shifts[i], 8, i, x -> 0));
    }
    try (Frame stack = stack(frames, shifts)) {
      assertThat(error(frames.get(0))).isBetween(7.5, 8.5);
      assertThat(error(stack)).isLessThan(8 / Math.sqrt(5) * 1.15);
    } finally {
      frames.forEach(Frame::close);
    }
  }

  @Test
  void aFrameThatLiesFarOffIsNoBrighterForWhatItDoesNotShow() {
    Frame first = frame(0, 0, 1, x -> 0);
    Frame off = frame(32, 0, 2, x -> 0);
    try (first;
        off;
        Frame stack = stack(List.of(first, off), 0, 32)) {
      assertThat(error(stack)).isLessThan(1);
    }
  }

  @Test
  void whereOneFrameIsSharperItCountsMore() {
    Frame leftSharp = frame(0, 1, 1, x -> x < WIDTH / 2 ? 0 : 3);
    Frame rightSharp = frame(0, 1, 2, x -> x < WIDTH / 2 ? 3 : 0);
    try (leftSharp;
        rightSharp;
        Frame stack = stack(List.of(leftSharp, rightSharp), 0, 0)) {
      assertThat(error(stack)).isLessThan(0.5 * error(leftSharp));
      assertThat(error(stack)).isLessThan(0.5 * error(rightSharp));
    }
  }
}
