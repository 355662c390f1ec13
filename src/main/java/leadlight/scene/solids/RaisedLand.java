package leadlight.scene.solids;

import leadlight.scene.chance.Grain;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Material;

/** What a raised land leaves to be seen beside and below it: its edge, its shade, broken mask. */
public final class RaisedLand {

  /** Most that the mask breaks off beside the toe end. Common practice, no source. */
  private static final double BROKEN_MM = 0.05;

  /** Width of the strained mask at the opening's rim. Common practice, no source. */
  private static final double STRAINED_MM = 0.075;

  private final RowLayout row;
  private final long seed;

  public RaisedLand(RowLayout row) {
    this.row = row;
    this.seed = row.spec.seed();
  }

  /**
   * Share of its light that the board at a place keeps. Below a raised land only what enters under
   * the edge arrives: the view factor of a floor element to the strip between floor and edge, (1 -
   * cos) / 2 of the angle under which it sees the edge (long strips; Howell, A Catalog of Radiation
   * Heat Transfer Configuration Factors, from memory).
   */
  public double lightBelow(int i, double u, double v) {
    LiftFrame frame = row.frame(i);
    double in = frame == null ? 0 : row.insideOutline(i, u, frame.landOver(v), 0);
    return in <= 0 ? 1 : (1 - in / Math.hypot(in, frame.gapAt(v))) / 2;
  }

  /** How far the mask beside the land's toe end has broken off; unevenly, 0 at a lying land. */
  public double brokenMm(int i, double u, double v) {
    return row.frame(i) == null
        ? 0
        : BROKEN_MM * freed(v) * Math.max(0, Grain.cloud(seed + 11, 9 * u, 9 * v));
  }

  /** How much the mask at a distance from its rim is wrinkled and crazed, 0 to 1. */
  public double strained(int i, double v, double fromRimMm) {
    return row.frame(i) == null ? 0 : freed(v) * Math.max(0, 1 - fromRimMm / STRAINED_MM);
  }

  /** Share of the land that lies between its hinge and a place: 0 at the heel, 1 at the toe. */
  private double freed(double v) {
    return Math.max(0, Math.min(1, (v - row.landHeel()) / row.part.landLengthMm()));
  }

  /**
   * Follows a line of sight, in the joint's own frame, that passes the land's upper side to the
   * edge of its foil.
   *
   * @return true if it meets the edge; the hit is then painted
   */
  public boolean meetEdge(int i, double[] own, Hit hit) {
    hit.z = -LiftFrame.FOIL_MM;
    hit.u = own[0] + own[2] * hit.z;
    hit.v = own[1] + own[3] * hit.z;
    if (row.insideLand(i, hit.u, hit.v, 0) <= 0) {
      return false;
    }
    hit.paint(Material.COPPER);
    hit.surface = Shader.LAND;
    hit.normal(own[2], own[3], 0.05);
    return true;
  }
}
