package leadlight.scene.board;

import leadlight.scene.chance.Grain;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.solids.RowLayout;

/** Copper under the mask: traces from the lands, their vias, links between lands, and a pour. */
final class CopperLayer {

  private static final double NONE = -1;
  private static final double VIA_MM = 0.2;
  private static final double CLEAR_MM = 0.18;

  private final RowLayout row;
  private final BoardSpec board;
  private final PartSpec part;
  private final long seed;
  private final double end;
  private final double fanFrom;
  private final double fan;
  private final double pourFrom;
  private final boolean[] traced;
  private final double[] stop;

  /** Distance inside the copper nearest to the place last asked for; negative outside it. */
  double inside;

  /** Which way the nearest edge leans. */
  double leanU;

  double leanV;

  CopperLayer(RowLayout row) {
    this.row = row;
    this.board = row.spec.board();
    this.part = row.part;
    this.seed = row.spec.seed();
    this.end = part.landsAtMm()[row.leads() - 1];
    this.fanFrom = part.landAheadMm() + 0.25 + 0.8 * Grain.hash(seed, 11, 1);
    this.fan = (Grain.hash(seed, 11, 2) - 0.5) * 4 * part.pitchMm();
    this.pourFrom = part.landAheadMm() + 0.6 + Grain.hash(seed, 11, 3);
    this.traced = new boolean[row.leads()];
    this.stop = new double[row.leads()];
    for (int k = 0; k < stop.length; k++) {
      traced[k] = Grain.hash(seed, 12, k) < board.traces() && row.frame(k) == null;
      stop[k] = last(k);
    }
  }

  /** Looks up one place. */
  void at(double u, double v) {
    inside = NONE;
    leanU = 1;
    leanV = 0;
    int i = row.nearest(u);
    if (v > part.landAheadMm() - 0.1) {
      for (int k = Math.max(0, i - 5); k <= Math.min(row.leads() - 1, i + 5); k++) {
        if (traced[k]) {
          trace(k, u, v);
        }
      }
    } else {
      link(i, u, v);
    }
    if (board.pour()) {
      pour(u, v);
    }
  }

  private void trace(int k, double u, double v) {
    double off = u - path(k, Math.min(v, stop[k]));
    if (v < stop[k]) {
      nearer(board.traceWidthMm() / 2 - Math.abs(off), Math.signum(off), 0);
    }
    double past = v - stop[k];
    if (past < -2 * VIA_MM) {
      return;
    }
    double r = Math.sqrt(off * off + past * past);
    nearer(VIA_MM - r, off / (r + 1e-9), past / (r + 1e-9));
  }

  /** Where a trace ends in a via; most leave the picture. */
  private double last(int k) {
    double ends = Grain.hash(seed, 23, k);
    return ends < 0.3 ? part.landAheadMm() + 0.7 + 0.55 * (k % 3) + ends : 1e3;
  }

  /** Distance from the middle of a via's hole, if the place lies in one; a large number else. */
  double viaAt(double u, double v) {
    int i = row.nearest(u);
    double best = 1e3;
    for (int k = Math.max(0, i - 5); k <= Math.min(row.leads() - 1, i + 5); k++) {
      if (traced[k]) {
        double past = v - stop[k];
        double off = u - path(k, stop[k]);
        best = Math.min(best, off * off + past * past);
      }
    }
    return Math.sqrt(best);
  }

  private void nearer(double depth, double towardsU, double towardsV) {
    if (depth > inside) {
      inside = depth;
      leanU = towardsU;
      leanV = towardsV;
    }
  }

  private void link(int i, double u, double v) {
    double at = part.landsAtMm()[i];
    int k = u > at ? i : i - 1;
    if (k < 0 || k >= row.leads() - 1 || Grain.hash(seed, 24, k) >= board.paired()) {
      return;
    }
    double middle = row.landHeel() + part.landLengthMm() * (0.2 + 0.6 * Grain.hash(seed, 25, k));
    double off = v - middle;
    nearer(Math.min(0.3, part.landWidthMm()[i] / 2) - Math.abs(off), 0, Math.signum(off));
  }

  private void pour(double u, double v) {
    double clear = Math.max(v - pourFrom, Math.abs(u - end / 2) - end / 2 - 1.1);
    double gap = inside > NONE ? Math.min(clear, -inside - CLEAR_MM) : clear;
    if (gap > inside) {
      boolean straight = clear <= -inside - CLEAR_MM;
      double turn = straight ? 0 : -1;
      leanU = turn * leanU;
      leanV = straight ? -1 : turn * leanV;
      inside = gap;
    }
  }

  private double path(int k, double v) {
    double way = Math.max(0, Math.min(Math.abs(fan), v - fanFrom - 0.06 * (k % 5)));
    return part.landsAtMm()[k] + Math.signum(fan) * way;
  }
}
