package leadlight.register;

import java.util.function.IntPredicate;
import leadlight.model.picture.Plane;

/** How sharp pictures over one grid are, and how to soften one until it is as soft as another. */
public final class Focus {

  private Focus() {}

  /**
   * Two pictures of one focus.
   *
   * @param a the first, softened if it was the sharper
   * @param b the second, likewise
   */
  public record Pair(Plane a, Plane b) {}

  /**
   * The sharper picture softened until both have as much contrast from pixel to pixel.
   *
   * @param use pixels that count
   */
  public static Pair alike(Plane first, Plane second, IntPredicate use, RegisterTuning tuning) {
    double enough = tuning.alikeFocus().value();
    Plane a = first;
    Plane b = second;
    for (int step = 0; step < tuning.focusSteps().value(); step++) {
      double ratio = ratio(a, b, use);
      if (ratio < enough && ratio > 1 / enough) {
        break;
      }
      a = ratio >= enough ? softer(a) : a;
      b = ratio <= 1 / enough ? softer(b) : b;
    }
    return new Pair(a, b);
  }

  /** How many times as much contrast from pixel to pixel the first has, as squares. */
  static double ratio(Plane a, Plane b, IntPredicate use) {
    return contrast(a, use) / Math.max(1e-9, contrast(b, use));
  }

  private static double contrast(Plane light, IntPredicate use) {
    int w = light.width();
    double sum = 0;
    for (int y = 1; y < light.height() - 1; y++) {
      for (int x = 1; x < w - 1; x++) {
        int i = y * w + x;
        if (use.test(i)) {
          double gx = light.data()[i + 1] - light.data()[i - 1];
          double gy = light.data()[i + w] - light.data()[i - w];
          sum += gx * gx + gy * gy;
        }
      }
    }
    return sum;
  }

  /** Weights 1, 6, 1 across and down: a Gaussian of half a pixel. */
  public static Plane softer(Plane light) {
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
