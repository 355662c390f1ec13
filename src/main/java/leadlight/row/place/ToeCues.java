package leadlight.row.place;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/**
 * What tells the toe, for each row of a strip whose body is above: the end of the foot's flat top,
 * seen as a change at the lead's middle that the land's flanks do not show, a usual distance before
 * the land's open end.
 */
final class ToeCues {

  private static final double LEVELS = 10;
  private static final double[] STEPS = {-0.16, -0.08, 0, 0.08, 0.16};
  private static final double[] NEAR_STEPS = {-0.08, 0, 0.08};

  private final LengthProfiles p;
  private final Rows rows;
  private final double landToe;
  private final int from;
  private final int to;
  private final Cues cues = new Cues();

  private ToeCues(LengthProfiles p, Rows rows, double landToe, int from, int to) {
    this.p = p;
    this.rows = rows;
    this.landToe = landToe;
    this.from = from;
    this.to = to;
  }

  /**
   * @param landToe row of the lands' open end
   * @param from first row where a toe may lie
   * @param to last row
   */
  static Cues of(LengthProfiles p, int perPitch, double pitchMm, double landToe, int from, int to) {
    ToeCues c = new ToeCues(p, new Rows(perPitch), landToe, from, to);
    c.distance(perPitch, pitchMm);
    c.changes();
    c.flatness();
    c.colours();
    c.foot();
    return c.cues;
  }

  private void distance(int perPitch, double pitchMm) {
    double[] pitches = new double[p.middle().length];
    for (int y = 0; y < pitches.length; y++) {
      pitches[y] = (landToe - y) / perPitch;
    }
    cues.add("land_ahead_mm", Rows.each(pitches, d -> d * pitchMm));
    cues.add("land_ahead_mm2", Rows.each(pitches, d -> d * pitchMm * d * pitchMm));
    cues.add("land_ahead", pitches);
    cues.add("land_ahead2", Rows.each(pitches, d -> d * d));
  }

  private void changes() {
    double[][] steps = rows.steps(p.middle(), 0.0375);
    double[] rise = Rows.channels(steps, s -> s);
    double[] change = Rows.channels(steps, Math::abs);
    double[][] singles = rows.steps(p.middles(), 0.0375);
    double[] single = Rows.channels(singles, s -> Math.abs(LandEndCues.limited(s)));
    double[] common = Rows.channels(singles, LandEndCues::limited);
    double most = 1 + largest(change);
    double mostSingle = 1 + largest(single);
    double[] fall = Rows.each(rise, r -> -r);
    for (double far : STEPS) {
      cues.add("fall_" + far, Rows.log(rows.shifted(fall, far), LEVELS / 2));
      cues.add("rise_" + far, Rows.log(rows.shifted(rise, far), LEVELS / 2));
    }
    for (double far : NEAR_STEPS) {
      cues.add("change_" + far, Rows.log(rows.shifted(change, far), LEVELS / 2));
      cues.add("share_" + far, Rows.each(rows.shifted(change, far), c -> c / most));
      cues.add("single_share_" + far, Rows.each(rows.shifted(single, far), c -> c / mostSingle));
      cues.add("single_" + far, Rows.log(rows.shifted(single, far), LEVELS / 2));
    }
    cues.add("fall_share", Rows.log(fall, 0.1 * most));
    cues.add("rise_share", Rows.log(rise, 0.1 * most));
    cues.add("singles_alike", ratio(Rows.each(common, Math::abs), single));
    flanks(change);
    strongest("fall", fall);
    strongest("rise", rise);
  }

  private double largest(double[] values) {
    return Arrays.stream(values, from, to + 1).max().orElse(0);
  }

  private static double[] ratio(double[] a, double[] b) {
    double[] out = new double[a.length];
    for (int y = 0; y < out.length; y++) {
      out[y] = a[y] / (b[y] + 2);
    }
    return out;
  }

  private void flanks(double[] change) {
    double[][] steps = rows.steps(p.flank(), 0.0375);
    double[] rise = Rows.channels(steps, s -> s);
    double[] own = Rows.channels(steps, Math::abs);
    double[] both = new double[own.length];
    for (int y = 0; y < both.length; y++) {
      both[y] = own[y] + change[y];
    }
    cues.add("flank_fall", Rows.log(Rows.each(rise, r -> -r), LEVELS / 2));
    cues.add("flank_rise", Rows.log(rise, LEVELS / 2));
    cues.add("flank_change", Rows.log(own, LEVELS / 2));
    cues.add("flank_share", ratio(own, both));
  }

  /** The strongest changes ahead, up to the land's end, and behind. */
  private void strongest(String name, double[] change) {
    double end = landToe - 2;
    cues.add(name + "_ahead", Rows.log(rows.largest(change, 0.08, 9, end), LEVELS / 2));
    cues.add(name + "_behind", Rows.log(rows.largest(change, -0.5, -0.08, end), LEVELS / 2));
    cues.add(name + "_near_behind", Rows.log(rows.largest(change, -0.25, -0.08, end), LEVELS / 2));
  }

  private void flatness() {
    double[] change = Rows.channels(rows.steps(p.middle(), 0.02), Math::abs);
    cues.add("uneven_behind", Rows.log(rows.mean(change, -0.4, -0.08), LEVELS / 2));
    cues.add("uneven_near_behind", Rows.log(rows.mean(change, -0.2, -0.06), LEVELS / 2));
    cues.add("uneven_near_ahead", Rows.log(rows.mean(change, 0.06, 0.2), LEVELS / 2));
    cues.add("uneven_ahead", Rows.log(rows.mean(change, 0.06, 0.4), LEVELS / 2));
  }

  private void colours() {
    double[][] behind = rows.mean(p.middle(), -0.25, -0.06);
    double[][] ahead = rows.mean(p.middle(), 0.06, 0.2);
    double[][] flankBehind = rows.mean(p.flank(), -0.25, -0.06);
    double[][] flankAhead = rows.mean(p.flank(), 0.06, 0.2);
    differ("behind_ahead", behind, ahead);
    differ("behind_flank", behind, flankBehind);
    differ("ahead_flank", ahead, flankAhead);
    differ("behind_foot", rows.mean(p.middle(), -0.6, -0.3), behind);
    differ("flank_behind_ahead", flankBehind, flankAhead);
  }

  /** How like the foot further up both sides are. */
  private void foot() {
    double[][] foot = new double[p.middle().length][3];
    int first = Math.max(0, from - rows.perPitch() / 2);
    double[] typical = new double[3];
    for (int c = 0; c < 3; c++) {
      int channel = c;
      typical[c] =
          Quantiles.median(
              Arrays.stream(p.middle(), first, from + 1).mapToDouble(r -> r[channel]).toArray());
    }
    Arrays.fill(foot, typical);
    double[][] behind = rows.mean(p.middle(), -0.12, -0.04);
    double[][] ahead = rows.mean(p.middle(), 0.04, 0.12);
    differ("foot_behind", behind, foot);
    differ("foot_ahead", ahead, foot);
    double[] grey = Rows.channels(foot, s -> s);
    double[] b = Rows.channels(behind, s -> s);
    double[] a = Rows.channels(ahead, s -> s);
    for (int y = 0; y < grey.length; y++) {
      a[y] -= grey[y];
      b[y] -= grey[y];
    }
    cues.add("foot_level_behind", Rows.each(b, x -> Math.abs(x) / 30));
    cues.add("foot_level_ahead", Rows.each(a, x -> Math.abs(x) / 30));
    cues.add("brighter_ahead", Rows.each(a, x -> x / 50));
  }

  private void differ(String name, double[][] a, double[][] b) {
    cues.add(name, Rows.log(Rows.distance(a, b), LEVELS));
  }
}
