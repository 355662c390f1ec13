package leadlight.scene.board;

import leadlight.scene.chance.Grain;
import leadlight.scene.light.Bump;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.solids.RaisedLand;
import leadlight.scene.solids.RowLayout;

/** The board's surface: mask, openings, lands, what shows through, print and dust. */
public final class BoardFace {

  private static final double PLAIN_MM = 0.08;
  private static final double SLOPE_MM = 0.025;
  private static final double TRACE_SLOPE = 0.24;
  private static final double MASK_SLOPE = 0.7;
  private static final double HOLE_MM = 0.1;
  private static final double SPECK_CELL_MM = 0.3;

  private final RowLayout row;
  private final BoardSpec board;
  private final PartSpec part;
  private final long seed;
  private final Bump bumps;
  private final CopperLayer copper;
  private final Legend legend;
  private final RaisedLand raised;
  private final double end;

  public BoardFace(RowLayout row) {
    this.row = row;
    this.board = row.spec.board();
    this.part = row.part;
    this.seed = row.spec.seed();
    this.bumps = new Bump(seed);
    this.end = part.landsAtMm()[row.leads() - 1];
    this.copper = new CopperLayer(row);
    this.legend = new Legend(row);
    this.raised = new RaisedLand(row);
  }

  /** Paints the board at the hit's place; the hit's height is set to the face. */
  public void meet(Hit hit) {
    int i = row.nearest(hit.u);
    hit.normal(0, 0, 1);
    double land = row.insideLand(i, hit.u, hit.v, 0);
    if (land > 0 && row.frame(i) == null) {
      bareLand(hit, land);
      return;
    }
    double rim = opening(i, hit.u, hit.v);
    if (rim > 0) {
      laminate(hit, i);
      return;
    }
    mask(hit, -rim);
  }

  private void laminate(Hit hit, int i) {
    hit.paint(Material.LAMINATE);
    hit.surface = Shader.MATTE;
    double weave = 1 + 0.18 * Grain.cloud(seed + 5, 9 * hit.u, 23 * hit.v);
    hit.scale(weave, weave, weave);
    boolean bared = row.spec.joints().get(i).torn() || row.frame(i) != null;
    if (bared && row.insideOutline(i, hit.u, hit.v, 0) > 0) {
      double rough = 0.8 + 0.25 * Grain.cloud(seed + 9, 17 * hit.u, 11 * hit.v);
      hit.scale(rough, 0.95 * rough, 0.9 * rough);
      bump(hit, 0.25, 0.03);
    }
    double light = raised.lightBelow(i, hit.u, hit.v);
    hit.scale(light, light, light);
  }

  /**
   * Meets a raised land, in its joint's own frame: its upper side, or the foil's edge.
   *
   * @return true if the line of sight meets it; the hit is then painted
   */
  public boolean meetFoil(int i, double[] own, Hit hit) {
    hit.u = own[0];
    hit.v = own[1];
    hit.z = 0;
    double inside = row.insideLand(i, hit.u, hit.v, 0);
    if (inside > 0) {
      hit.normal(0, 0, 1);
      bareLand(hit, inside);
      return true;
    }
    return raised.meetEdge(i, own, hit);
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
      return row.insideOutline(i, u, v, board.openingMm() + raised.brokenMm(i, u, v));
    }
    double left = -part.landWidthMm()[0] / 2 - board.openingMm();
    double right = end + part.landWidthMm()[row.leads() - 1] / 2 + board.openingMm();
    double along = Math.min(u - left, right - u);
    double vFrom = row.landHeel() - board.openingMm();
    return Math.min(along, Math.min(v - vFrom, part.landAheadMm() + board.openingMm() - v));
  }

  /** Strained mask is wrinkled, and paler where it has crazed. */
  private void craze(Hit hit, double much) {
    double pale = 1 + 0.5 * much * (1 + Grain.cloud(seed + 12, 15 * hit.u, 15 * hit.v));
    hit.scale(pale, pale, pale);
    bump(hit, 0.3 * much, 0.04);
  }

  private void mask(Hit hit, double fromRim) {
    hit.material = Material.MASK;
    hit.surface = Shader.MASK;
    copper.at(hit.u, hit.v);
    double edge = Math.abs(copper.inside);
    double over = Math.max(0, Math.min(1, 0.5 + copper.inside / SLOPE_MM));
    hit.plain = edge > PLAIN_MM && fromRim > PLAIN_MM && hit.v > part.landAheadMm();
    colour(hit, over);
    if (edge < SLOPE_MM) {
      double lean = TRACE_SLOPE * (1 - edge / SLOPE_MM);
      hit.normal(copper.leanU * lean, copper.leanV * lean, 1);
    }
    bump(hit, 0.012, 0.03);
    bump(hit, 0.010, 0.7);
    if (fromRim < SLOPE_MM) {
      rim(hit, fromRim);
    }
    double strained = raised.strained(row.nearest(hit.u), hit.v, fromRim);
    if (strained > 0) {
      craze(hit, strained);
    }
    if (hit.v > part.landAheadMm()) {
      hole(hit);
    }
    if (legend.covers(hit.u, hit.v)) {
      hit.plain = false;
      hit.paint(Material.PRINT);
      hit.surface = Shader.MATTE;
    }
  }

  /** The mask's colour over copper or laminate, with the glass weave faintly through it. */
  private void colour(Hit hit, double over) {
    double[] bare = board.mask().laminate;
    double[] covered = board.mask().copper;
    double mottle = 1 + 0.07 * Grain.cloud(seed + 7, 1.3 * hit.u, 1.3 * hit.v);
    double weave = Math.sin(14 * hit.u + Grain.smooth(seed + 10, 2 * hit.u, hit.v));
    mottle += 0.03 * (1 - over) * weave * Math.sin(12 * hit.v);
    hit.red = (bare[0] + over * (covered[0] - bare[0])) * mottle;
    hit.green = (bare[1] + over * (covered[1] - bare[1])) * mottle;
    hit.blue = (bare[2] + over * (covered[2] - bare[2])) * mottle;
  }

  private void rim(Hit hit, double fromRim) {
    double lean = MASK_SLOPE * (1 - fromRim / SLOPE_MM);
    int i = row.nearest(hit.u);
    double du = (opening(i, hit.u + 1e-4, hit.v) + fromRim) / 1e-4;
    double dv = (opening(i, hit.u, hit.v + 1e-4) + fromRim) / 1e-4;
    hit.normal(hit.nu + lean * du, hit.nv + lean * dv, hit.nz);
  }

  /** Mask sags into a via's hole; the hole itself is dark. */
  private void hole(Hit hit) {
    double r = copper.viaAt(hit.u, hit.v);
    if (r < HOLE_MM + 0.06) {
      hit.plain = false;
      double dark = r < HOLE_MM ? 0.25 : 0.25 + 0.75 * (r - HOLE_MM) / 0.06;
      hit.scale(dark, dark, dark);
      bump(hit, 0.2 * (1 - dark), 0.05);
    }
  }

  /** Lays a grain of dust over whatever was met, if one lies there. */
  public void dust(Hit hit) {
    int x = (int) Math.floor(hit.u / SPECK_CELL_MM);
    int y = (int) Math.floor(hit.v / SPECK_CELL_MM);
    double share = board.specks() * SPECK_CELL_MM * SPECK_CELL_MM;
    if (share <= 0 || Grain.hash(seed + 50, x, y) >= share) {
      return;
    }
    double size = 0.006 + 0.03 * Math.pow(Grain.hash(seed + 51, x, y), 3);
    double room = SPECK_CELL_MM - 2 * size;
    double u = hit.u - x * SPECK_CELL_MM - size - room * Grain.hash(seed + 52, x, y);
    double v = hit.v - y * SPECK_CELL_MM - size - room * Grain.hash(seed + 53, x, y);
    double lie = Math.PI * Grain.hash(seed + 54, x, y);
    double a = (u * Math.cos(lie) + v * Math.sin(lie)) / size;
    double b = (v * Math.cos(lie) - u * Math.sin(lie)) / size * 1.7;
    hit.plain = false;
    if (a * a + b * b < 1) {
      hit.paint(Material.FIBRE);
      double pale = 0.25 + 0.9 * Grain.hash(seed + 55, x, y);
      hit.scale(pale, pale, 0.93 * pale);
      hit.surface = Shader.MATTE;
      hit.normal(0.6 * a, 0.6 * b, 1);
    }
  }

  /** Rough metal or orange peel. */
  public void bump(Hit hit, double slope, double sizeMm) {
    bumps.lean(hit, slope, sizeMm);
  }

  public Bump bumps() {
    return bumps;
  }
}
