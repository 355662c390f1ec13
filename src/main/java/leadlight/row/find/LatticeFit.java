package leadlight.row.find;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.numeric.LeastSquares;
import leadlight.numeric.Parabola;
import leadlight.numeric.Quantiles;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Lean;
import leadlight.row.strip.Strip;
import leadlight.row.strip.Waves;
import leadlight.row.strip.Zone;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Projective;

/**
 * Straightens the map from row units to the photo: pitch and its drift from the cells' phases, the
 * row's slope from where the cells' structure lies along the leads. Robust, so that missing and
 * bent leads do not matter.
 */
final class LatticeFit {

  private static final RowTuning.LatticeTuning TUNING = RowTuning.builtIn().lattice();

  /** Short enough for a direction at a point. */
  private static final double NEAR = 0.01;

  private final Lattice lattice;
  private final double usualLean;

  /**
   * @param usualLean standard deviation of the leads' lean, pitches a pitch
   */
  LatticeFit(Lattice lattice, double usualLean) {
    this.lattice = lattice;
    this.usualLean = usualLean;
  }

  /** A better map than the strip's own. */
  Homography along(Strip strip, Waves waves, Zone zone) {
    double[] c = drift(waves, zone);
    double half = lattice.span() / 2;
    return corrected(
        strip.uvToPhoto(),
        zone,
        (u, v) -> {
          double t = (u - half) / half;
          double w = v - zone.middle();
          return new double[] {u + c[0] + c[1] * t + c[2] * t * t + c[3] * t * w, v};
        });
  }

  /**
   * The map with its leads leaning as is likely: what the phases say, the less trusted the less
   * they agree, as glints and shadows wander along the leads under light from the side.
   */
  Homography leaning(Homography map, Waves waves, Zone zone) {
    Lean seen = Lean.of(waves, zone);
    double now = lean(map);
    double likely = (now + seen.mean()) * seen.trust(usualLean);
    return map.after(new Homography(1, likely - now, 0, 0, 1, 0, 0, 0, 1));
  }

  /** Shift along the row per pitch along the leads, pitches, at the row's middle. */
  private double lean(Homography map) {
    double half = lattice.span() / 2;
    PointPx at = map.map(half, 0);
    PointPx along = map.map(half + NEAR, 0);
    PointPx down = map.map(half, NEAR);
    double ux = along.x() - at.x();
    double uy = along.y() - at.y();
    return (ux * (down.x() - at.x()) + uy * (down.y() - at.y())) / (ux * ux + uy * uy);
  }

  /** Shift of the cells against the zone's mean phase: constant, linear, square, keystone. */
  private double[] drift(Waves waves, Zone zone) {
    double middle = zone.middle();
    List<double[]> rows = new ArrayList<>();
    List<double[]> yw = new ArrayList<>();
    double half = lattice.span() / 2;
    for (int part = 0; part < 2; part++) {
      double from = part == 0 ? zone.from() : middle;
      double to = part == 0 ? middle : zone.to();
      for (int k = 0; k < lattice.count(); k++) {
        double[] z = cell(waves, k, from, to);
        double t = (lattice.u()[k] - half) / half;
        double w = (from + to) / 2 - middle;
        rows.add(new double[] {1, t, t * t, t * w});
        yw.add(new double[] {Math.atan2(z[1], z[0]) / (2 * Math.PI), Math.hypot(z[0], z[1])});
      }
    }
    double[] y = yw.stream().mapToDouble(a -> a[0]).toArray();
    double[] w = yw.stream().mapToDouble(a -> a[1]).toArray();
    return LeastSquares.robust(
        rows.toArray(new double[0][]), y, w, TUNING.outlier(), TUNING.outlierLeast());
  }

  private static double[] cell(Waves waves, int k, double from, double to) {
    double re = 0;
    double im = 0;
    for (int b = 0; b < waves.bands; b++) {
      if (waves.v(b) >= from && waves.v(b) <= to) {
        double[] lock = waves.lock(b);
        double c = Math.cos(lock[1]) * lock[0];
        double s = Math.sin(lock[1]) * lock[0];
        re += waves.re(b, k) * c + waves.im(b, k) * s;
        im += waves.im(b, k) * c - waves.re(b, k) * s;
      }
    }
    return new double[] {re, im};
  }

  /** A map whose rows are level: the cells' profiles along v aligned with their median. */
  Homography level(Strip strip, Waves waves, Zone zone) {
    int n = lattice.count();
    double[][] rows = new double[n][];
    double[] y = new double[n];
    double[] w = new double[n];
    double[] typical = new double[waves.bands];
    for (int b = 0; b < waves.bands; b++) {
      double[] column = new double[n];
      for (int k = 0; k < n; k++) {
        column[k] = Math.sqrt(waves.energy(b, k));
      }
      typical[b] = Quantiles.median(column);
    }
    double half = lattice.span() / 2;
    for (int k = 0; k < n; k++) {
      double t = (lattice.u()[k] - half) / half;
      rows[k] = new double[] {1, t};
      double[] best = alignment(waves, k, typical);
      y[k] = best[0];
      w[k] = best[1];
    }
    double[] c = LeastSquares.robust(rows, y, w, TUNING.slopeOutlier(), TUNING.slopeOutlierLeast());
    return corrected(
        strip.uvToPhoto(), zone, (u, v) -> new double[] {u, v + c[1] * (u - half) / half});
  }

  /** Shift (pitches) of a cell's profile against the typical one, and how well it then fits. */
  private static double[] alignment(Waves waves, int k, double[] typical) {
    int most = (int) Math.round(1.5 / Waves.BAND_V);
    double[] score = new double[2 * most + 1];
    int best = most;
    for (int shift = -most; shift <= most; shift++) {
      double dot = 0;
      double aa = 1e-9;
      double bb = 1e-9;
      for (int b = 0; b < waves.bands; b++) {
        int q = b + shift;
        if (q >= 0 && q < waves.bands) {
          double a = Math.sqrt(waves.energy(q, k));
          dot += a * typical[b];
          aa += a * a;
          bb += typical[b] * typical[b];
        }
      }
      score[shift + most] = dot / Math.sqrt(aa * bb);
      if (score[shift + most] > score[best]) {
        best = shift + most;
      }
    }
    double peak = Parabola.peak(score, best);
    return new double[] {(peak - most) * Waves.BAND_V, Math.max(0, score[best])};
  }

  interface Shift {
    double[] apply(double u, double v);
  }

  /** The projective map closest to the old one applied to shifted places. */
  private Homography corrected(Homography old, Zone zone, Shift shift) {
    List<PointPx> from = new ArrayList<>();
    List<PointPx> to = new ArrayList<>();
    for (int i = 0; i <= 8; i++) {
      for (int j = -1; j <= 1; j++) {
        double u = lattice.span() * i / 8;
        double v = zone.middle() + 2 * j;
        double[] uv = shift.apply(u, v);
        from.add(new PointPx(u, v));
        to.add(old.map(uv[0], uv[1]));
      }
    }
    return Projective.fit(from, to);
  }
}
