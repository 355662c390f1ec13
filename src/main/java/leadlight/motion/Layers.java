package leadlight.motion;

import leadlight.register.Overlay;

/**
 * The foot as one layer over its land as another: what the other photo should show if the foot had
 * moved. Inside the moved foot the foot's own light, outside both feet the land as it was; what the
 * foot uncovers was never seen and says nothing.
 */
final class Layers {

  private final Overlay overlay;
  private final boolean[] covered;
  private final Foot foot;
  private final NudgeTuning tuning;
  private final double pitchPx;

  Layers(Overlay overlay, boolean[] covered, Foot foot, NudgeTuning tuning, double pitchPx) {
    this.overlay = overlay;
    this.covered = covered;
    this.foot = foot;
    this.tuning = tuning;
    this.pitchPx = pitchPx;
  }

  /**
   * The likeliest movement.
   *
   * @param toePx shift of the toe, grid pixels
   * @param slope shift lost a pixel towards the heel
   * @param ratio difference of light if the foot moved by a pixel or more, as the best of these
   *     explains it, over that if it did not move
   */
  record Best(double toePx, double slope, double ratio) {}

  /** The likeliest movement, coarse steps first. */
  Best search(int towards) {
    double reach = tuning.reachPitch().value() * pitchPx;
    Best best = new Best(0, 0, 1);
    double zero = difference(best);
    double least = zero;
    double other = Double.MAX_VALUE;
    for (double s = -reach; s <= reach; s += 0.5) {
      if (towards * s >= 0) {
        for (double turns : TURNS) {
          Best tried = new Best(s, s / (foot.length() * turns), 1);
          double d = difference(tried);
          if (d < least) {
            least = d;
            best = tried;
          }
          if (Math.abs(s) >= tuning.smallPx().value()) {
            other = Math.min(other, d);
          }
        }
      }
    }
    Best found = best.toePx() == 0 ? best : finer(best, least, towards);
    return new Best(found.toePx(), found.slope(), zero > 0 ? other / zero : 1);
  }

  /** Where a pushed lead turns, in feet behind its toe: at its heel, or at the body behind it. */
  private static final double[] TURNS = {1.0, 1.4, 2.0};

  private Best finer(Best start, double startDifference, int towards) {
    Best best = start;
    double least = startDifference;
    for (double step = 0.25; step > 0.04; step /= 2) {
      boolean better = true;
      while (better) {
        better = false;
        for (Best tried : around(best, step)) {
          double d = towards * tried.toePx() < 0 ? least : difference(tried);
          if (d < least) {
            least = d;
            best = tried;
            better = true;
          }
        }
      }
    }
    return best;
  }

  private Best[] around(Best at, double step) {
    double turn = step / foot.length();
    return new Best[] {
      new Best(at.toePx() + step, at.slope(), 1),
      new Best(at.toePx() - step, at.slope(), 1),
      new Best(at.toePx(), at.slope() + turn, 1),
      new Best(at.toePx(), at.slope() - turn, 1),
      new Best(at.toePx() + step, at.slope() + turn, 1),
      new Best(at.toePx() - step, at.slope() - turn, 1),
    };
  }

  /** Mean size of the difference between what is seen and what should be, grey levels, bounded. */
  private double difference(Best moved) {
    float[] fixed = overlay.fixed().light().data();
    float[] moving = overlay.moving().light().data();
    int w = overlay.fixed().light().width();
    int h = overlay.fixed().light().height();
    double bound = tuning.mostLevels().value();
    double reach = tuning.reachPitch().value() * pitchPx;
    double half = foot.halfWidth() + tuning.rimPitch().value() * pitchPx;
    double beside = tuning.besidePitch().value() * pitchPx;
    double sum = 0;
    int n = 0;
    int y0 = (int) Math.max(0, foot.heelY() + 0.25 * foot.length());
    int y1 = (int) Math.min(h - 1, foot.toeY());
    for (int y = y0; y <= y1; y++) {
      double mid = foot.middle(y);
      double shift = moved.toePx() - moved.slope() * (foot.toeY() - y);
      int x0 = (int) Math.max(2, mid - foot.halfWidth() - reach);
      int x1 = (int) Math.min(w - 4, mid + foot.halfWidth() + reach);
      for (int x = x0; x <= x1; x++) {
        int i = y * w + x;
        if (covered[i] || !overlay.seen(i)) {
          continue;
        }
        n++;
        double expected;
        if (Math.abs(x - mid - shift) <= half) {
          double from = x - shift;
          int at = (int) Math.floor(from);
          if (at < 1 || at >= w - 2) {
            sum += bound / 2;
            continue;
          }
          expected = Cubic.at(fixed, y * w + at, from - at);
        } else if (Math.abs(x - mid) > half) {
          expected = fixed[i];
        } else {
          int land = (int) Math.round(mid - Math.signum(shift) * (half + beside));
          double seenLand = land < 0 || land >= w ? moving[i] : fixed[y * w + land];
          sum += Math.min(tuning.uncoveredLevels().value(), Math.abs(moving[i] - seenLand));
          continue;
        }
        sum += Math.min(bound, Math.abs(moving[i] - expected));
      }
    }
    return n == 0 ? 0 : sum / n;
  }
}
