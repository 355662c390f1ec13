package leadlight.scene;

import java.util.ArrayList;
import java.util.List;

/** The board's surface: mask, openings, lands, traces and print. */
final class BoardFace {

  private static final double PLAIN_MM = 0.08;
  private static final double SLOPE_MM = 0.025;
  private static final double TRACE_SLOPE = 0.35;
  private static final double MASK_SLOPE = 0.7;
  private static final double PRINT_STROKE_MM = 0.07;

  private final RowLayout row;
  private final SceneSpec.Board board;
  private final SceneSpec.Part part;
  private final long seed;
  private final double fanFrom;
  private final double fan;
  private final double pourFrom;
  private final List<double[]> strokes = new ArrayList<>();
  private final double end;
  private boolean plainCopper;

  BoardFace(RowLayout row) {
    this.row = row;
    this.board = row.spec.board();
    this.part = row.part;
    this.seed = row.spec.seed();
    this.end = part.landsAtMm()[row.leads() - 1];
    this.fanFrom = part.landAheadMm() + 0.25 + 0.8 * Grain.hash(seed, 11, 1);
    this.fan = (Grain.hash(seed, 11, 2) - 0.5) * 4 * part.pitchMm();
    this.pourFrom = part.landAheadMm() + 0.6 + Grain.hash(seed, 11, 3);
    if (board.print()) {
      write();
    }
  }

  /** Paints the board at the hit's place; the hit's height is set to the face. */
  void meet(Hit hit) {
    int i = row.nearest(hit.u);
    hit.normal(0, 0, 1);
    double land = row.insideLand(i, hit.u, hit.v, 0);
    if (land > 0) {
      bareLand(hit, land);
      return;
    }
    double rim = opening(i, hit.u, hit.v);
    if (rim > 0) {
      hit.paint(Material.LAMINATE);
      hit.surface = Shader.MATTE;
      double weave = 1 + 0.18 * Grain.cloud(seed + 5, 9 * hit.u, 23 * hit.v);
      hit.scale(weave, weave, weave);
      return;
    }
    mask(hit, -rim);
  }

  private void bareLand(Hit hit, double inside) {
    hit.paint(board.finish());
    hit.surface = Shader.LAND;
    double worn = 1 - 0.12 * (0.5 + 0.5 * Grain.cloud(seed + 6, 14 * hit.u, 14 * hit.v));
    hit.scale(worn, worn, worn);
    double round = Math.max(0, 1 - inside / 0.02);
    bump(hit, 0.02 + 0.05 * round, 0.010);
  }

  /** Depth inside a mask opening, negative outside. */
  private double opening(int i, double u, double v) {
    if (!board.gang()) {
      return row.insideLand(i, u, v, board.openingMm());
    }
    double edge = part.landWidthMm()[0] / 2 + board.openingMm();
    double along = Math.min(u + edge, end + edge - u);
    double vFrom = row.landHeel() - board.openingMm();
    return Math.min(along, Math.min(v - vFrom, part.landAheadMm() + board.openingMm() - v));
  }

  private void mask(Hit hit, double fromRim) {
    hit.material = Material.MASK;
    hit.surface = Shader.MASK;
    double over = copper(hit);
    double[] bare = board.mask().laminate;
    double[] covered = board.mask().copper;
    double mottle = 1 + 0.07 * Grain.cloud(seed + 7, 1.3 * hit.u, 1.3 * hit.v);
    hit.red = (bare[0] + over * (covered[0] - bare[0])) * mottle;
    hit.green = (bare[1] + over * (covered[1] - bare[1])) * mottle;
    hit.blue = (bare[2] + over * (covered[2] - bare[2])) * mottle;
    bump(hit, 0.012, 0.03);
    hit.plain = plainCopper && fromRim > PLAIN_MM && hit.v > part.landAheadMm();
    if (fromRim < SLOPE_MM) {
      double lean = MASK_SLOPE * (1 - fromRim / SLOPE_MM);
      int i = row.nearest(hit.u);
      double du = (opening(i, hit.u + 1e-4, hit.v) + fromRim) / 1e-4;
      double dv = (opening(i, hit.u, hit.v + 1e-4) + fromRim) / 1e-4;
      hit.normal(hit.nu + lean * du, hit.nv + lean * dv, hit.nz);
    }
    if (board.print() && printed(hit.u, hit.v)) {
      hit.plain = false;
      hit.paint(Material.PRINT);
      hit.surface = Shader.MATTE;
    }
  }

  /** Share of copper under the mask; leans the normal on the copper's edges. */
  private double copper(Hit hit) {
    double best = -1;
    double side = 1;
    int i = row.nearest(hit.u);
    if (hit.v > part.landAheadMm() - 0.1) {
      for (int k = Math.max(0, i - 5); k <= Math.min(row.leads() - 1, i + 5); k++) {
        if (Grain.hash(seed, 12, k) < board.traces()) {
          double off = hit.u - path(k, hit.v);
          double d = board.traceWidthMm() / 2 - Math.abs(off);
          if (d > best) {
            best = d;
            side = Math.signum(off);
          }
        }
      }
    }
    double pour = board.pour() ? pour(hit, best) : -1;
    double inside = Math.max(best, pour);
    double edge = Math.abs(inside);
    plainCopper = edge > PLAIN_MM;
    if (edge < SLOPE_MM) {
      double lean = TRACE_SLOPE * (1 - edge / SLOPE_MM);
      boolean trace = best >= pour;
      hit.normal(trace ? side * lean : 0, trace ? 0 : -lean, 1);
    }
    return Math.max(0, Math.min(1, 0.5 + inside / SLOPE_MM));
  }

  private double pour(Hit hit, double trace) {
    double clear = Math.max(hit.v - pourFrom, Math.abs(hit.u - end / 2) - end / 2 - 1.1);
    double gap = trace > -1 ? Math.min(clear, -trace - 0.18) : clear;
    return Math.max(-1, gap);
  }

  private double path(int k, double v) {
    double way = Math.max(0, Math.min(Math.abs(fan), v - fanFrom - 0.06 * (k % 5)));
    return part.landsAtMm()[k] + Math.signum(fan) * way;
  }

  /** Rough metal or orange peel: leans the normal by a seeded slope. */
  void bump(Hit hit, double slope, double sizeMm) {
    double x = hit.u / sizeMm;
    double y = hit.v / sizeMm;
    double nu = hit.nu + slope * Grain.smooth(seed + 21, x, y);
    double nv = hit.nv + slope * Grain.smooth(seed + 22, x, y);
    hit.normal(nu, nv, hit.nz);
  }

  private void write() {
    double left = -0.9 - 0.4 * Grain.hash(seed, 13, 1);
    double right = end + 0.9 + 0.4 * Grain.hash(seed, 13, 2);
    double low = -0.2 + 0.6 * Grain.hash(seed, 13, 3);
    strokes.add(new double[] {left, low - 3, left, low});
    strokes.add(new double[] {right, low - 3, right, low});
    strokes.add(new double[] {left, low, left + 0.35, low});
    strokes.add(new double[] {right, low, right - 0.35, low});
    double v = part.landAheadMm() + 0.7 + 1.2 * Grain.hash(seed, 13, 4);
    double size = 0.45 + 0.35 * Grain.hash(seed, 13, 5);
    double u = Grain.hash(seed, 13, 6) * end * 0.7;
    for (int k = 0; k < 4; k++) {
      glyph(u + k * size, v, size, k);
    }
  }

  /** A made-up mark of a few strokes. */
  private void glyph(double u, double v, double size, int k) {
    double w = size * 0.55;
    double[][] bars = {
      {u, v, u + w, v},
      {u, v, u, v + size},
      {u + w, v, u + w, v + size},
      {u, v + size, u + w, v + size},
      {u, v + size / 2, u + w, v + size / 2},
      {u, v, u + w, v + size}
    };
    for (int b = 0; b < bars.length; b++) {
      if (Grain.hash(seed, 14 + k, b) < 0.5) {
        strokes.add(bars[b]);
      }
    }
  }

  private boolean printed(double u, double v) {
    double ragged = PRINT_STROKE_MM + 0.012 * Grain.smooth(seed + 8, 20 * u, 20 * v);
    for (double[] s : strokes) {
      double du = s[2] - s[0];
      double dv = s[3] - s[1];
      double t = ((u - s[0]) * du + (v - s[1]) * dv) / (du * du + dv * dv);
      t = Math.max(0, Math.min(1, t));
      double x = u - s[0] - t * du;
      double y = v - s[1] - t * dv;
      if (x * x + y * y < ragged * ragged) {
        return true;
      }
    }
    return false;
  }
}
