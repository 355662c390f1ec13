package leadlight.register;

import java.util.Arrays;
import leadlight.model.Plane;

/**
 * Exposure and focus of two overlaid photos made alike: light by the median ratio, focus by
 * softening the sharper of the two until both have as much contrast from pixel to pixel.
 */
public final class Matched {

  /** Contrasts this alike are left alone: softening loses more than it mends. */
  private static final double NEARLY = 1.7;

  /** A ratio of contrast that needs no further softening. */
  private static final double ALIKE = 1.1;

  private static final int MOST_STEPS = 40;

  /** Darker pixels say little of a ratio: they are mostly the camera's black level. */
  private static final double DARK = 10;

  private Matched() {}

  /** The overlay with both cuts alike in exposure and focus. */
  public static Overlay of(Overlay overlay) {
    float[] fixed = overlay.fixed().light().data().clone();
    float[] moving = overlay.moving().light().data().clone();
    double gain = gain(overlay, fixed, moving);
    for (int i = 0; i < moving.length; i++) {
      moving[i] /= (float) gain;
    }
    int w = overlay.fixed().light().width();
    int h = overlay.fixed().light().height();
    Plane a = new Plane(w, h, fixed);
    Plane b = new Plane(w, h, moving);
    double first = contrast(overlay, a) / Math.max(1e-9, contrast(overlay, b));
    int steps = first < NEARLY && first > 1 / NEARLY ? 0 : MOST_STEPS;
    for (int step = 0; step < steps; step++) {
      double ratio = contrast(overlay, a) / Math.max(1e-9, contrast(overlay, b));
      if (ratio < ALIKE && ratio > 1 / ALIKE) {
        break;
      }
      a = ratio >= ALIKE ? softer(a) : a;
      b = ratio <= 1 / ALIKE ? softer(b) : b;
    }
    return new Overlay(
        new Cut(overlay.fixed().grid(), a, overlay.fixed().seen()),
        new Cut(overlay.moving().grid(), b, overlay.moving().seen()),
        overlay.gridToMoving(),
        overlay.likeness(),
        overlay.ownLikeness(),
        overlay.margin());
  }

  private static double gain(Overlay overlay, float[] fixed, float[] moving) {
    double[] ratios = new double[fixed.length];
    int n = 0;
    for (int i = 0; i < fixed.length; i++) {
      if (overlay.seen(i) && fixed[i] > DARK && moving[i] > DARK) {
        ratios[n++] = moving[i] / fixed[i];
      }
    }
    Arrays.sort(ratios, 0, n);
    return n == 0 ? 1 : ratios[n / 2];
  }

  private static double contrast(Overlay overlay, Plane light) {
    int w = light.width();
    double sum = 0;
    for (int y = 1; y < light.height() - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        int i = y * w + x;
        if (overlay.seen(i)) {
          double gx = light.data()[i + 1] - light.data()[i - 1];
          double gy = light.data()[i + w] - light.data()[i - w];
          sum += gx * gx + gy * gy;
        }
      }
    }
    return sum;
  }

  /** Weights 1, 6, 1 across and down: a Gaussian of half a pixel. */
  private static Plane softer(Plane light) {
    int w = light.width();
    int h = light.height();
    float[] across = light.data().clone();
    for (int i = 1; i < across.length - 1; i++) {
      int x = i % w;
      if (x > 0 && x < w - 1) {
        across[i] = (light.data()[i - 1] + 6 * light.data()[i] + light.data()[i + 1]) / 8;
      }
    }
    float[] down = across.clone();
    for (int i = w; i < down.length - w; i++) {
      down[i] = (across[i - w] + 6 * across[i] + across[i + w]) / 8;
    }
    return new Plane(w, h, down);
  }
}
