package leadlight.row;

import leadlight.model.Plane;

/**
 * Each lead's own place: its foot near the toe matched across with the row's typical foot, its toe
 * matched along; leads that match badly stay closer to the row's lattice. The typical foot's middle
 * is found by its own cues, as lead tops may stand off the lands' lattice (tilt, a shifted part).
 */
final class LeadRefiner {

  /**
   * @param du shift of the toe along the row, pitches
   * @param dv shift of the toe along the lead, pitches
   * @param match correlation of the foot across
   * @param uAcross standard uncertainty of du
   * @param uAlong standard uncertainty of dv
   */
  record Place(double du, double dv, double match, double uAcross, double uAlong) {}

  private static final double HALF_WIDTH = 0.36;
  private static final double REACH = 0.42;
  private static final double TOE_HALF_WIDTH = 0.14;
  private static final double TOE_REACH = 0.12;

  /** The stretch of the foot near its toe that tells the lead's middle, pitches from the toe. */
  private static final double FOOT_FROM = 0.4;

  private static final double FOOT_TO = 0.05;
  private static final double LAND_EDGE = 0.03;

  private final Strip strip;
  private final Lattice lattice;
  private final ToeLocator ends;
  private final int middle;
  private final double[][][] feet;
  private final double[][] typicalFoot;
  private final double axis;
  private final double axisSpread;
  private final double uMiddle;
  private final RowTuning.Spread spread;
  private final double pitchPx;

  LeadRefiner(
      Strip strip,
      Lattice lattice,
      ToeLocator ends,
      RowTuning.Spread spread,
      double pitchPx,
      double axisReach,
      double mostSpread) {
    this.spread = spread;
    this.pitchPx = pitchPx;
    this.strip = strip;
    this.lattice = lattice;
    this.ends = ends;
    this.middle = (int) Math.round(1.1 * strip.perPitch());
    feet = across(ends.toe() - FOOT_FROM, ends.toe() - FOOT_TO);
    typicalFoot = median(feet);
    Middle foot = middle(typicalFoot, ends.toe(), axisReach);
    Middle seen = foot.spread > mostSpread ? byLands(foot, axisReach) : foot;
    axis = seen.at;
    axisSpread = seen.spread;
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
    Middle lands = middle(median(across(end - FOOT_FROM, end - FOOT_TO)), end, reach);
    return lands.spread < foot.spread && lands.agrees(foot) ? lands : foot;
  }

  private Middle middle(double[][] foot, double toe, double reach) {
    double from = toe + FOOT_TO;
    double[][] land = median(across(from, Math.max(from, ends.landToe() - LAND_EDGE)));
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

  private double[][][] across(double vFrom, double vTo) {
    double[][][] all = new double[lattice.count()][][];
    for (int k = 0; k < all.length; k++) {
      all[k] = across(lattice.u()[k], vFrom, vTo);
    }
    return all;
  }

  Place place(int k) {
    int s = strip.perPitch();
    int w = (int) Math.round(HALF_WIDTH * s);
    int reach = (int) Math.round(REACH * s);
    double[] scores = new double[2 * reach + 1];
    int best = 0;
    for (int shift = -reach; shift <= reach; shift++) {
      double far = shift / (double) s;
      scores[shift + reach] =
          correlation(typicalFoot, middle, feet[k], middle + shift, w) - 0.6 * far * far;
      if (scores[shift + reach] > scores[best]) {
        best = shift + reach;
      }
    }
    double match = Math.max(-1, Math.min(1, scores[best]));
    double trust = Math.max(0, Math.min(1, (match - 0.6) / 0.3));
    double seen = (peak(scores, best) - reach) / s;
    double du = axis + trust * seen;
    double uAcross =
        spread.across()
            + spread.acrossMismatch() * Math.sqrt(1 - match)
            + spread.acrossUntrusted() * (1 - trust)
            + spread.acrossPx() / pitchPx;
    double[] along = along(k, du);
    return new Place(du, along[0], match, Math.hypot(uAcross, uMiddle), along[1]);
  }

  private double[] along(int k, double du) {
    int s = strip.perPitch();
    double[] own = toeProfile(lattice.u()[k] + du);
    double[] typical = typicalToe();
    int reach = (int) Math.round(TOE_REACH * s);
    int w = (own.length - 1) / 2 - reach;
    int centre = (own.length - 1) / 2;
    double[] scores = new double[2 * reach + 1];
    int best = 0;
    for (int shift = -reach; shift <= reach; shift++) {
      scores[shift + reach] = correlation(column(typical), centre, column(own), centre + shift, w);
      if (scores[shift + reach] > scores[best]) {
        best = shift + reach;
      }
    }
    boolean trusted = scores[best] > 0.8 && best > 0 && best < 2 * reach;
    double dv = trusted ? 0.6 * (peak(scores, best) - reach) / s : 0;
    double uOwn = (trusted ? spread.along() : spread.alongUntrusted()) + spread.alongPx() / pitchPx;
    return new double[] {dv, Math.hypot(uOwn, ends.uToe())};
  }

  private double[] typicalToe;

  private double[] typicalToe() {
    if (typicalToe == null) {
      double[][] all = new double[lattice.count()][];
      for (int k = 0; k < all.length; k++) {
        all[k] = toeProfile(lattice.u()[k] + axis);
      }
      typicalToe = new double[all[0].length];
      double[] column = new double[all.length];
      for (int i = 0; i < typicalToe.length; i++) {
        for (int k = 0; k < all.length; k++) {
          column[k] = all[k][i];
        }
        typicalToe[i] = LeastSquares.median(column);
      }
    }
    return typicalToe;
  }

  private static double[][] column(double[] values) {
    double[][] out = new double[values.length][1];
    for (int i = 0; i < values.length; i++) {
      out[i][0] = values[i];
    }
    return out;
  }

  /** Mean brightness across the lead's middle for each row around the toe. */
  private double[] toeProfile(double u) {
    Plane cut =
        strip.cut(
            strip.grey(),
            u - TOE_HALF_WIDTH,
            u + TOE_HALF_WIDTH,
            ends.toe() - 0.4,
            ends.toe() + 0.4);
    double[] out = new double[cut.height()];
    for (int y = 0; y < out.length; y++) {
      for (int x = 0; x < cut.width(); x++) {
        out[y] += cut.at(x, y) / cut.width();
      }
    }
    return out;
  }

  /** Median down a stretch of a lead, for each column around u and each channel. */
  private double[][] across(double u, double v0, double v1) {
    Plane[] planes = {strip.colour().red(), strip.colour().green(), strip.colour().blue()};
    double[][] out = new double[2 * middle + 1][3];
    int rows = (int) Math.round((v1 - v0) * strip.perPitch());
    double[] column = new double[rows + 1];
    for (int x = 0; x < out.length; x++) {
      double at = strip.x(u) + x - middle;
      for (int c = 0; c < 3; c++) {
        for (int y = 0; y <= rows; y++) {
          column[y] = value(planes[c], at, (int) Math.round(strip.y(v0)) + y);
        }
        out[x][c] = LeastSquares.median(column);
      }
    }
    return out;
  }

  private static double value(Plane p, double x, int y) {
    double c = Math.max(0, Math.min(p.width() - 1.001, x));
    int i = (int) c;
    int j = Math.max(0, Math.min(p.height() - 1, y));
    return p.at(i, j) * (1 - c + i) + p.at(i + 1, j) * (c - i);
  }

  private static double[][] median(double[][][] all) {
    double[][] out = new double[all[0].length][all[0][0].length];
    double[] column = new double[all.length];
    for (int x = 0; x < out.length; x++) {
      for (int c = 0; c < out[x].length; c++) {
        for (int k = 0; k < all.length; k++) {
          column[k] = all[k][x][c];
        }
        out[x][c] = LeastSquares.median(column);
      }
    }
    return out;
  }

  /** Normalised correlation, each channel's mean removed. */
  static double correlation(double[][] a, int ca, double[][] b, int cb, int w) {
    int channels = a[0].length;
    double dot = 0;
    double aa = 1e-3;
    double bb = 1e-3;
    for (int c = 0; c < channels; c++) {
      double ma = 0;
      double mb = 0;
      for (int i = -w; i <= w; i++) {
        ma += a[ca + i][c] / (2 * w + 1);
        mb += b[cb + i][c] / (2 * w + 1);
      }
      for (int i = -w; i <= w; i++) {
        double x = a[ca + i][c] - ma;
        double y = b[cb + i][c] - mb;
        dot += x * y;
        aa += x * x;
        bb += y * y;
      }
    }
    return dot / Math.sqrt(aa * bb);
  }

  static double peak(double[] scores, int best) {
    if (best == 0 || best == scores.length - 1) {
      return best;
    }
    double l = scores[best - 1];
    double r = scores[best + 1];
    double curve = l - 2 * scores[best] + r;
    return best + (curve < 0 ? 0.5 * (l - r) / curve : 0);
  }
}
