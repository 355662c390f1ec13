package leadlight.motion;

import java.util.Arrays;
import java.util.OptionalDouble;
import leadlight.model.picture.Plane;
import leadlight.register.Normal;
import leadlight.register.Overlay;
import leadlight.register.Robust;

/**
 * How far a lead's foot lies to the side in the other photo: the cut of the foot is shifted until
 * it agrees, the shift growing from the heel to the toe as of a lead that bends above its heel.
 * Gauss and Newton, robust; the bound of Cramer and Rao for the noise that is left (Robinson and
 * Milanfar 2004).
 */
final class ShiftMeter {

  private static final int UNKNOWNS = 4;

  private final Overlay overlay;
  private final Plane fixed;
  private final Plane moving;
  private final NudgeTuning tuning;
  private final double pitchPx;
  private final boolean[] covered;

  ShiftMeter(Overlay overlay, NudgeTuning tuning, double pitchPx, boolean[] covered) {
    this.overlay = overlay;
    this.fixed = overlay.fixed().light();
    this.moving = overlay.moving().light();
    this.tuning = tuning;
    this.pitchPx = pitchPx;
    this.covered = covered;
  }

  /**
   * A shift.
   *
   * @param toePx of the toe, towards pin N, grid pixels
   * @param boundPx least standard deviation that this cut allows (Cramer-Rao), grid pixels
   * @param apartPx how far two ways of measuring it lie apart
   * @param ratio as of {@link Layers.Best}
   */
  record Shift(double toePx, double boundPx, double apartPx, double ratio) {}

  /**
   * Measures one foot: by its own light where it hardly moved, else by both layers, too.
   *
   * @param towards the direction it may have been pushed: 1 towards pin N, -1 towards pin 1, 0
   *     either
   */
  Shift of(Foot foot, int towards) {
    Layers.Best best = new Layers(overlay, covered, foot, tuning, pitchPx).search(towards);
    if (Math.abs(best.toePx()) < tuning.smallPx().value()) {
      Fine fine = refined(foot, 0, 0);
      return new Shift(fine.toePx, fine.boundPx, 0, best.ratio());
    }
    Fine fine = refined(foot, best.toePx(), best.slope());
    double apart = Math.abs(fine.toePx - best.toePx());
    double most = Math.max(1, tuning.agreeShare().value() * Math.abs(best.toePx()));
    return apart <= most
        ? new Shift((fine.toePx + best.toePx()) / 2, fine.boundPx, apart, best.ratio())
        : new Shift(best.toePx(), fine.boundPx, most, best.ratio());
  }

  /**
   * Shift of a foot that nobody pushed, grid pixels; unknown where too little of it is in view to
   * say so to a part of a pixel: a foot outside the picture or under the pick is not a still one.
   */
  OptionalDouble still(Foot foot) {
    Fine fine = refined(foot, 0, 0);
    return fine.boundPx < tuning.smallPx().value()
        ? OptionalDouble.of(fine.toePx)
        : OptionalDouble.empty();
  }

  private record Fine(double toePx, double boundPx) {}

  private Fine refined(Foot foot, double start, double startSlope) {
    double s = start;
    double slope = startSlope;
    Normal normal = new Normal(UNKNOWNS);
    double spread = 0;
    for (int round = 0; round < tuning.rounds().value(); round++) {
      Samples samples = new Samples(foot, s, slope);
      double gain = samples.gain();
      double offset = samples.offset(gain);
      spread = samples.spread(gain, offset);
      normal = new Normal(UNKNOWNS);
      for (int k = 0; k < samples.count; k++) {
        double r = samples.a[k] - gain * samples.b[k] - offset;
        double weight = Robust.weight(r, spread);
        if (weight > 0) {
          double g = (samples.ga[k] + gain * samples.gb[k]) / 2;
          normal.add(
              new double[] {g, -g * samples.fromToe[k], samples.b[k] - samples.meanB, 1},
              r,
              weight);
        }
      }
      double[] step = normal.solution();
      s += Math.max(-1, Math.min(1, step[0]));
      slope += Math.max(-0.1, Math.min(0.1, step[1]));
    }
    return new Fine(s, spread * Math.sqrt(normal.variance(0)));
  }

  /** Pairs of light: the foot at rest, and the same place of the foot in the other photo. */
  private final class Samples {
    final double[] a;
    final double[] b;
    final double[] ga;
    final double[] gb;
    final double[] fromToe;
    int count;
    double meanA;
    double meanB;

    Samples(Foot foot, double s, double slope) {
      double rim = tuning.rimPitch().value() * pitchPx;
      int y0 = (int) Math.ceil(foot.heelY());
      int y1 = (int) Math.floor(foot.toeY() + rim);
      int most = (y1 - y0 + 1) * ((int) (2 * (foot.halfWidth() + rim)) + 3);
      a = new double[Math.max(1, most)];
      b = new double[a.length];
      ga = new double[a.length];
      gb = new double[a.length];
      fromToe = new double[a.length];
      for (int y = y0; y <= y1; y++) {
        double mid = foot.middle(y);
        double shift = s - slope * (foot.toeY() - y);
        int x0 = (int) Math.ceil(mid - foot.halfWidth() - rim);
        int x1 = (int) Math.floor(mid + foot.halfWidth() + rim);
        for (int x = x0; x <= x1 && count < a.length; x++) {
          take(x, y, shift, foot.toeY() - y);
        }
      }
      for (int k = 0; k < count; k++) {
        meanA += a[k] / count;
        meanB += b[k] / count;
      }
    }

    private void take(int x, int y, double shift, double back) {
      int w = fixed.width();
      int at = (int) Math.floor(x + shift);
      if (x < 1 || x >= w - 1 || at < 2 || at >= w - 3 || y < 0 || y >= fixed.height()) {
        return;
      }
      int line = y * w;
      if (!overlay.seen(line + x)
          || !overlay.moving().seen()[line + at]
          || covered[line + at]
          || covered[line + at + 1]) {
        return;
      }
      double f = x + shift - at;
      a[count] = fixed.data()[line + x];
      b[count] = Cubic.at(moving.data(), line + at, f);
      ga[count] = (fixed.data()[line + x + 1] - fixed.data()[line + x - 1]) / 2;
      gb[count] =
          (Cubic.at(moving.data(), line + at + 1, f) - Cubic.at(moving.data(), line + at - 1, f))
              / 2;
      fromToe[count] = back;
      count++;
    }

    double gain() {
      double ab = 0;
      double bb = 0;
      for (int k = 0; k < count; k++) {
        ab += (a[k] - meanA) * (b[k] - meanB);
        bb += (b[k] - meanB) * (b[k] - meanB);
      }
      double limit = tuning.mostGain().value();
      return bb <= 0 ? 1 : Math.max(1 / limit, Math.min(limit, ab / bb));
    }

    double offset(double gain) {
      return meanA - gain * meanB;
    }

    double spread(double gain, double offset) {
      double[] sizes = new double[count];
      for (int k = 0; k < count; k++) {
        sizes[k] = Math.abs(a[k] - gain * b[k] - offset);
      }
      Arrays.sort(sizes);
      return count == 0 ? 1 : Math.max(0.5, Robust.spread(sizes[count / 2]));
    }
  }
}
