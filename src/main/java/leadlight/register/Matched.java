package leadlight.register;

import java.util.Arrays;
import leadlight.model.picture.Plane;

/**
 * Exposure and focus of two overlaid photos made alike: light by the median ratio, focus by
 * softening the sharper of the two until both have as much contrast from pixel to pixel.
 */
public final class Matched {

  private Matched() {}

  /**
   * The overlay with both cuts alike in exposure and focus; contrasts that are nearly alike are
   * left alone, as softening loses more than it mends, and dark pixels say nothing of exposure.
   */
  public static Overlay of(Overlay overlay, RegisterTuning tuning) {
    float[] fixed = overlay.fixed().light().data().clone();
    float[] moving = overlay.moving().light().data().clone();
    double gain = gain(overlay, fixed, moving, tuning.darkLevels().value());
    for (int i = 0; i < moving.length; i++) {
      moving[i] /= (float) gain;
    }
    int w = overlay.fixed().light().width();
    int h = overlay.fixed().light().height();
    Plane a = new Plane(w, h, fixed);
    Plane b = new Plane(w, h, moving);
    double ratio = Focus.ratio(a, b, overlay::seen);
    double nearly = tuning.nearlyFocus().value();
    if (ratio >= nearly || ratio <= 1 / nearly) {
      Focus.Pair alike = Focus.alike(a, b, overlay::seen, tuning);
      a = alike.a();
      b = alike.b();
    }
    return new Overlay(
        new Cut(overlay.fixed().grid(), a, overlay.fixed().seen()),
        new Cut(overlay.moving().grid(), b, overlay.moving().seen()),
        overlay.gridToMoving(),
        overlay.likeness(),
        overlay.ownLikeness(),
        overlay.margin());
  }

  private static double gain(Overlay overlay, float[] fixed, float[] moving, double dark) {
    double[] ratios = new double[fixed.length];
    int n = 0;
    for (int i = 0; i < fixed.length; i++) {
      if (overlay.seen(i) && fixed[i] > dark && moving[i] > dark) {
        ratios[n++] = moving[i] / fixed[i];
      }
    }
    Arrays.sort(ratios, 0, n);
    return n == 0 ? 1 : ratios[n / 2];
  }
}
