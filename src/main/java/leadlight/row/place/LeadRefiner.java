package leadlight.row.place;

import leadlight.numeric.Parabola;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;
import leadlight.row.tuning.RowTuning;

/**
 * Each lead's own place: its foot near the toe matched across with the row's typical foot, its toe
 * matched along; leads that match badly stay closer to the row's lattice. The typical foot's middle
 * is found by its own cues, as lead tops may stand off the lands' lattice (tilt, a shifted part).
 */
final class LeadRefiner {

  private static final RowTuning.Refine REFINE = RowTuning.builtIn().refine();

  /**
   * @param du shift of the toe along the row, pitches
   * @param dv shift of the toe along the lead, pitches
   * @param match correlation of the foot across
   * @param uAcross standard uncertainty of du
   * @param uAlong standard uncertainty of dv
   */
  record Place(double du, double dv, double match, double uAcross, double uAlong) {}

  private final Strip strip;
  private final Lattice lattice;
  private final ToesAndHeels ends;
  private final int middle;
  private final FootCuts cuts;
  private final double[][][] feet;
  private final double[][] typicalFoot;
  private final double axis;
  private final double axisSpread;
  private final double[] typicalToe;
  private final double uMiddle;
  private final RowTuning.Spread spread;
  private final double pitchPx;

  LeadRefiner(
      Strip strip,
      Lattice lattice,
      ToesAndHeels ends,
      RowTuning.Spread spread,
      double pitchPx,
      double axisReach,
      double mostSpread) {
    this.spread = spread;
    this.pitchPx = pitchPx;
    this.strip = strip;
    this.lattice = lattice;
    this.ends = ends;
    this.cuts = new FootCuts(strip, lattice);
    this.middle = cuts.middle();
    feet = cuts.across(ends.toe() - REFINE.footFrom(), ends.toe() - REFINE.footTo());
    typicalFoot = FootCuts.median(feet);
    Middle foot = middle(typicalFoot, ends.toe(), axisReach);
    Middle seen = foot.spread > mostSpread ? byLands(foot, axisReach) : foot;
    axis = seen.at;
    axisSpread = seen.spread;
    typicalToe = cuts.typicalToe(axis, ends.toe());
    // Where the feet do not tell their middle, no lead stands surer on its land than that.
    uMiddle = seen == foot ? 0 : foot.spread;
  }

  /**
   * The leads' middle by one stretch.
   *
   * @param at offset from the lattice, pitches
   * @param spread of its likely places, pitches
   */
  private record Middle(double at, double spread) {

    boolean agrees(Middle other) {
      return Math.abs(at - other.at) <= Math.hypot(spread, other.spread);
    }
  }

  /**
   * By the lands' open ends where the feet do not tell, as under flooding solder or in shadow,
   * unless the two contradict each other.
   */
  private Middle byLands(Middle foot, double reach) {
    double end = ends.landToe();
    Middle lands =
        middle(
            FootCuts.median(cuts.across(end - REFINE.footFrom(), end - REFINE.footTo())),
            end,
            reach);
    return lands.spread < foot.spread && lands.agrees(foot) ? lands : foot;
  }

  private Middle middle(double[][] foot, double toe, double reach) {
    double from = toe + REFINE.footTo();
    double[][] land =
        FootCuts.median(cuts.across(from, Math.max(from, ends.landToe() - REFINE.landEdge())));
    int columns = (int) (strip.perPitch() * reach);
    Choice choice =
        Choice.of(
            AxisCues.of(foot, land, middle, strip.perPitch()).score(spread.axisWeights()),
            middle - columns,
            middle + columns);
    return new Middle(
        (choice.row() - middle) / strip.perPitch(), choice.spread() / strip.perPitch());
  }

  /** Offset of the leads' middles from the lattice, common to the row. */
  double axis() {
    return axis;
  }

  /** Spread of the likely places of {@link #axis}, pitches. */
  double axisSpread() {
    return axisSpread;
  }

  Place place(int k) {
    int s = strip.perPitch();
    int w = (int) Math.round(REFINE.halfWidth() * s);
    int reach = (int) Math.round(REFINE.reach() * s);
    double[] scores = new double[2 * reach + 1];
    int best = 0;
    for (int shift = -reach; shift <= reach; shift++) {
      double far = shift / (double) s;
      scores[shift + reach] =
          Correlation.of(typicalFoot, middle, feet[k], middle + shift, w)
              - REFINE.farCost() * far * far;
      if (scores[shift + reach] > scores[best]) {
        best = shift + reach;
      }
    }
    double match = Math.max(-1, Math.min(1, scores[best]));
    double trust = Math.max(0, Math.min(1, (match - REFINE.trustFrom()) / REFINE.trustOver()));
    double seen = (Parabola.peak(scores, best) - reach) / s;
    double du = axis + trust * seen;
    double uAcross =
        spread.across()
            + spread.acrossMismatch() * Math.sqrt(1 - match)
            + spread.acrossUntrusted() * (1 - trust)
            + spread.acrossPx() / pitchPx;
    double[] along = along(k, du);
    return new Place(du, along[0], match, Math.hypot(uAcross, uMiddle), along[1]);
  }

  private static double[][] column(double[] values) {
    double[][] out = new double[values.length][1];
    for (int i = 0; i < values.length; i++) {
      out[i][0] = values[i];
    }
    return out;
  }

  private double[] along(int k, double du) {
    int s = strip.perPitch();
    double[] own = cuts.toe(lattice.u()[k] + du, ends.toe());
    double[][] typical = column(typicalToe);
    int reach = (int) Math.round(REFINE.toeReach() * s);
    int w = (own.length - 1) / 2 - reach;
    int centre = (own.length - 1) / 2;
    double[] scores = new double[2 * reach + 1];
    int best = 0;
    for (int shift = -reach; shift <= reach; shift++) {
      scores[shift + reach] = Correlation.of(typical, centre, column(own), centre + shift, w);
      if (scores[shift + reach] > scores[best]) {
        best = shift + reach;
      }
    }
    boolean trusted = scores[best] > REFINE.toeTrust() && best > 0 && best < 2 * reach;
    double dv = trusted ? REFINE.toeShare() * (Parabola.peak(scores, best) - reach) / s : 0;
    double uOwn = (trusted ? spread.along() : spread.alongUntrusted()) + spread.alongPx() / pitchPx;
    return new double[] {dv, Math.hypot(uOwn, ends.uToe())};
  }
}
