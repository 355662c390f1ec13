package leadlight.motion;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import leadlight.register.Overlay;
import leadlight.register.Robust;

/**
 * Finds the pick: the straight strip, from the open board ahead of the lands to a tip among the
 * leads, in which most pixels have taken the shade of one thing. Pixels that had that shade before
 * say nothing; pixels beside the strip speak against it. Its shade is not known beforehand: several
 * are tried, of light and of colour.
 */
final class PickFinder {

  private final NudgeTuning tuning;
  private final int width;
  private final int height;
  private final float[] fixed;
  private final float[] moving;
  private final boolean[] seen;
  private final double pitchPx;
  private final double toeY;
  private final double heelY;
  private final double landY;
  private final double limit;
  private final double[] change;

  private PickFinder(Overlay overlay, List<Foot> feet, NudgeTuning tuning, double pitchPx) {
    this.tuning = tuning;
    this.width = overlay.fixed().light().width();
    this.height = overlay.fixed().light().height();
    this.fixed = overlay.fixed().light().data();
    this.moving = overlay.moving().light().data();
    this.pitchPx = pitchPx;
    this.toeY = feet.stream().mapToDouble(Foot::toeY).average().orElse(0);
    this.landY = feet.stream().mapToDouble(Foot::landY).average().orElse(0);
    this.heelY = feet.stream().mapToDouble(Foot::heelY).average().orElse(0);
    this.seen = new boolean[fixed.length];
    for (int i = 0; i < seen.length; i++) {
      seen[i] = overlay.seen(i);
    }
    this.change = changes();
    this.limit = limit();
  }

  private double[] changes() {
    double[] out = new double[fixed.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = seen[i] ? moving[i] - fixed[i] : 0;
    }
    return out;
  }

  private double limit() {
    double[] sizes = Arrays.stream(change).map(Math::abs).filter(v -> v > 0).sorted().toArray();
    double spread = sizes.length == 0 ? 0 : Robust.spread(sizes[sizes.length / 2]);
    return Math.max(tuning.pickLevels().value(), tuning.pickSpreads().value() * spread);
  }

  /** The pick, if one reaches the row, as the picture shows it best that shows one. */
  static Optional<Pick> find(
      List<Overlay> looks, List<Foot> feet, NudgeTuning tuning, double pitchPx) {
    return looks.stream()
        .flatMap(look -> new PickFinder(look, feet, tuning, pitchPx).find().stream())
        .max(Comparator.comparingDouble(Pick::votes));
  }

  /** The pick, if one reaches the row. */
  private Optional<Pick> find() {
    double[] changed = new double[fixed.length];
    int n = 0;
    for (int i = 0; i < fixed.length; i++) {
      if (i / width > heelY && Math.abs(change[i]) > limit) {
        changed[n++] = moving[i];
      }
    }
    if (n < tuning.leastShare().value() * pitchPx * pitchPx) {
      return Optional.empty();
    }
    Arrays.sort(changed, 0, n);
    Strip best = new Strip(0, 0, 0, 0);
    for (double share : tuning.shades()) {
      Strip strip = best(changed[(int) (share * (n - 1))]);
      best = strip.score > best.score ? strip : best;
    }
    double least = tuning.leastStrip().value() * pitchPx;
    return !(best.score >= least) ? Optional.empty() : Optional.of(pick(best));
  }

  private Strip best(double shade) {
    double[] votes = votes(shade);
    Strip best = new Strip(0, 0, 0, 0);
    double step = Math.max(1, pitchPx / 24);
    for (double lean = -1; lean <= 1.001; lean += 0.05) {
      for (double x = 0; x < width; x += step) {
        Strip strip = strip(votes, x, lean);
        best = strip.score > best.score ? strip : best;
      }
    }
    return best;
  }

  /** How far each pixel speaks for the shade (1) or against it (-1); summed along lines. */
  private double[] votes(double shade) {
    double[] sums = new double[(width + 1) * height];
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int i = y * width + x;
        double room = fixed[i] - shade;
        double vote = 0;
        if (seen[i] && Math.abs(room) > limit) {
          double q = (fixed[i] - moving[i]) / room;
          vote = 2 * Math.max(0, Math.min(1, q)) - 1;
        }
        sums[y * (width + 1) + x + 1] = sums[y * (width + 1) + x] + vote;
      }
    }
    return sums;
  }

  private double mean(double[] sums, int y, double from, double to) {
    int a = (int) Math.max(0, Math.min(width - 1, Math.round(from)));
    int b = (int) Math.max(a + 1, Math.min(width, Math.round(to) + 1));
    return (sums[y * (width + 1) + b] - sums[y * (width + 1) + a]) / (b - a);
  }

  /**
   * A strip: place of its middle at the toes, its lean, the row of its tip. Its tip lies where its
   * rows cease to speak for it; over the open board it must be seen, else it is a lead's own glint.
   */
  private Strip strip(double[] votes, double xAtToe, double lean) {
    double sum = 0;
    double most = 0;
    double ahead = 0;
    int rowsAhead = 0;
    int tip = height;
    for (int y = height - 1; y > heelY; y--) {
      double mid = xAtToe + lean * (y - toeY);
      double half = half(y - toeY);
      if (mid < 4 * half || mid >= width - 4 * half) {
        continue;
      }
      double inside = mean(votes, y, mid - half, mid + half);
      double left = mean(votes, y, mid - 4 * half, mid - 3 * half);
      double right = mean(votes, y, mid + 3 * half, mid + 4 * half);
      double speaks = inside - (left + right) / 4;
      if (y > landY) {
        ahead += speaks;
        rowsAhead++;
      }
      sum += speaks - tuning.leastVote().value();
      if (sum > most) {
        most = sum;
        tip = y;
      }
    }
    boolean shaft = rowsAhead > 0 && ahead >= tuning.leastShaft().value() * rowsAhead;
    return new Strip(xAtToe, lean, tip, shaft && tip < toeY + 0.3 * pitchPx ? most : 0);
  }

  /** Half the width of a shaft, so many rows ahead of the toes. */
  private double half(double ahead) {
    double grown = tuning.pickTaper().value() * Math.max(0, ahead) / pitchPx;
    return tuning.pickHalfPitch().value() * pitchPx * (1 + grown);
  }

  /**
   * A straight strip.
   *
   * @param xAtToe column of its middle at the toes
   * @param lean columns a row
   * @param tipY row of its tip
   * @param score votes along it, rows
   */
  private record Strip(double xAtToe, double lean, double tipY, double score) {}

  private Pick pick(Strip strip) {
    double half = tuning.pickHalfPitch().value() * pitchPx;
    boolean[] cover = new boolean[fixed.length];
    for (int y = (int) Math.max(0, strip.tipY - half); y < height; y++) {
      double mid = strip.xAtToe + strip.lean * (Math.max(y, strip.tipY) - toeY);
      // A pick widens away from its tip.
      double wide = half * (1.3 + 0.5 * Math.max(0, y - strip.tipY) / pitchPx) + 1;
      for (int x = 0; x < width; x++) {
        cover[y * width + x] = Math.abs(x - mid) < wide;
      }
    }
    double tipX = strip.xAtToe + strip.lean * (strip.tipY - toeY);
    return new Pick(cover, tipX, strip.tipY, strip.lean, strip.score);
  }
}
