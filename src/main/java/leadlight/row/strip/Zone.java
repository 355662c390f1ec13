package leadlight.row.strip;

import leadlight.row.tuning.RowTuning;

/**
 * How far the periodic structure of the row reaches along the leads.
 *
 * @param from upper end, pitches
 * @param to lower end, pitches
 * @param lock mean phase lock of its bands, 0 to 1
 */
public record Zone(double from, double to, double lock) {

  private static final RowTuning.ZoneTuning TUNING = RowTuning.builtIn().zone();

  /** The zone around the best band near v = 0. */
  public static Zone of(Waves waves, double reach) {
    double[] lock = new double[waves.bands];
    int best = -1;
    double strongest = 0;
    for (int b = 0; b < waves.bands; b++) {
      strongest = Math.max(strongest, waves.amplitude(b));
    }
    for (int b = 0; b < waves.bands; b++) {
      lock[b] =
          waves.lock(b)[0] * Math.min(1, waves.amplitude(b) / (TUNING.clearShare() * strongest));
      if (Math.abs(waves.v(b)) < reach && (best < 0 || lock[b] > lock[best])) {
        best = b;
      }
    }
    int up = reach(lock, best, -1);
    int down = reach(lock, best, 1);
    double sum = 0;
    int n = 0;
    for (int b = up; b <= down; b++) {
      if (lock[b] >= TUNING.share() * lock[best]) {
        sum += lock[b];
        n++;
      }
    }
    double half = Waves.BAND_V / 2;
    return new Zone(waves.v(up) - half, waves.v(down) + half, n == 0 ? 0 : sum / n);
  }

  private static int reach(double[] lock, int best, int step) {
    int last = best;
    for (int b = best; b >= 0 && b < lock.length; b += step) {
      double gap = Math.abs(b - last) * Waves.BAND_V;
      if (lock[b]
          >= (gap > TUNING.longestGap() ? TUNING.strongShare() : TUNING.share()) * lock[best]) {
        last = b;
      } else if (gap > TUNING.longestDull()) {
        break;
      }
    }
    return last;
  }

  public double middle() {
    return (from + to) / 2;
  }

  public boolean holds(double v) {
    return v >= from && v <= to;
  }
}
