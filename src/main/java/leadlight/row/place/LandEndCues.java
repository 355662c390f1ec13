package leadlight.row.place;

import leadlight.row.strip.Strip;
import leadlight.row.strip.Zone;

/**
 * What tells the open end of the lands, for each row of a strip whose body is above: metal as wide
 * as a land on its upper side, on its lower side board alone (traces are narrower), a step of all
 * lands at once.
 */
final class LandEndCues {

  private static final double LEVELS = 10;
  private static final double[] IN = {-0.3, -0.08};
  private static final double[] OUT = {0.08, 0.3};
  private static final double[] FAR = {0.3, 0.9};
  private static final double[] NEAR_STEPS = {-0.15, -0.07, 0, 0.07, 0.15};

  private final LengthProfiles p;
  private final Rows rows;
  private final Cues cues = new Cues();

  private LandEndCues(LengthProfiles p, Rows rows) {
    this.p = p;
    this.rows = rows;
  }

  static Cues of(LengthProfiles p, Strip strip, Zone zone) {
    LandEndCues c = new LandEndCues(p, new Rows(strip.perPitch()));
    c.colours();
    c.roughness();
    c.steps("middle", p.middle());
    c.steps("flank", p.flank());
    c.singles("middles", p.middles());
    c.singles("flanks", p.flanks());
    c.places(strip, zone);
    return c.cues;
  }

  private void colours() {
    double[][] mi = in(p.middle());
    double[][] mo = out(p.middle());
    double[][] mf = far(p.middle());
    double[][] ei = in(p.flank());
    double[][] eo = out(p.flank());
    double[][] ef = far(p.flank());
    double[][] gi = in(p.gap());
    double[][] go = out(p.gap());
    double[][] gf = far(p.gap());
    differ("middle_in_out", mi, mo);
    differ("flank_in_out", ei, eo);
    differ("gap_in_out", gi, go);
    differ("middle_gap_out", mo, go);
    differ("flank_gap_out", eo, go);
    differ("middle_gap_in", mi, gi);
    differ("flank_gap_in", ei, gi);
    differ("middle_gap_far", mf, gf);
    differ("flank_gap_far", ef, gf);
    differ("middle_out_far", mo, mf);
    differ("flank_out_far", eo, ef);
    differ("gap_out_far", go, gf);
    differ("flank_beside_out", eo, out(p.beside()));
    differ("gap_beside_out", go, out(p.beside()));
    differ("flank_beside_in", ei, in(p.beside()));
    differ("gap_beside_in", gi, in(p.beside()));
    differ("flank_beside_far", ef, far(p.beside()));
    differ("gap_beside_far", gf, far(p.beside()));
  }

  private void roughness() {
    double[] r = Rows.log(p.roughness(), LEVELS / 2);
    cues.add("rough_in", rows.mean(r, IN[0], IN[1]));
    cues.add("rough_out", rows.mean(r, OUT[0], OUT[1]));
    cues.add("rough_far", rows.mean(r, FAR[0], FAR[1]));
  }

  private void steps(String name, double[][] colours) {
    double[] change = Rows.channels(rows.steps(colours, 0.03), Math::abs);
    double most = 1;
    for (double c : change) {
      most = Math.max(most, c + 1);
    }
    double all = most;
    double[] log = Rows.log(change, LEVELS / 2);
    for (double far : NEAR_STEPS) {
      cues.add(name + "_step_" + far, rows.shifted(log, far));
    }
    cues.add(name + "_step_share", Rows.each(change, c -> c / all));
  }

  /** How much the single leads change, and how alike. */
  private void singles(String name, double[][] leads) {
    double[][] steps = rows.steps(leads, 0.04);
    double[] mean = Rows.channels(steps, LandEndCues::limited);
    double[] size = Rows.channels(steps, s -> Math.abs(limited(s)));
    double[] alike = new double[mean.length];
    for (int y = 0; y < alike.length; y++) {
      alike[y] = Math.abs(mean[y]) / (size[y] + 2);
    }
    cues.add(name + "_alike", alike);
    cues.add(name + "_step", Rows.log(size, LEVELS / 2));
  }

  /** A single lead's change counts no more than this. */
  static double limited(double step) {
    return Math.max(-30, Math.min(30, step));
  }

  private void places(Strip strip, Zone zone) {
    double[] v = new double[strip.height()];
    for (int y = 0; y < v.length; y++) {
      v[y] = strip.v(y) - zone.to();
    }
    cues.add("beyond_zone", Rows.each(v, d -> Math.max(0, d)));
    cues.add("inside_zone", Rows.each(v, d -> Math.max(0, -d)));
    cues.add("far_beyond_zone", Rows.each(v, d -> d > 0.5 ? 1 : 0));
  }

  private void differ(String name, double[][] a, double[][] b) {
    cues.add(name, Rows.log(Rows.distance(a, b), LEVELS));
  }

  private double[][] in(double[][] colours) {
    return rows.mean(colours, IN[0], IN[1]);
  }

  private double[][] out(double[][] colours) {
    return rows.mean(colours, OUT[0], OUT[1]);
  }

  private double[][] far(double[][] colours) {
    return rows.mean(colours, FAR[0], FAR[1]);
  }
}
