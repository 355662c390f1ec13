package leadlight.scene.light;

import java.util.Arrays;
import leadlight.scene.plan.Mask;
import leadlight.scene.plan.MetalSpec;

/** From what a line of sight met to the light it brings back. One per thread. */
public final class Shader {

  public static final int SOLDER = 0;
  public static final int LEAD = 1;
  public static final int LAND = 2;
  public static final int MASK = 3;
  public static final int MATTE = 4;
  static final int DULL = 5;

  private static final double MASK_ROUGHNESS = 0.16;
  private static final double MATTE_ROUGHNESS = 0.42;
  private static final double DULL_ROUGHNESS = 0.4;
  private static final double POOL_ROUGHNESS = 0.06;

  /** Fresnel reflectance of a resin with refractive index 1.5 at normal incidence. */
  private static final double RESIN = 0.04;

  /** Share of the light that blocked directions send back instead of the lamp's. */
  private static final double BOUNCE = 0.22;

  private final LightTable[] lobes;
  private final double[] roughness;
  private final LightTable matte;
  private final LightTable gloss;
  private final Horizon horizon;
  private final Light light;
  private final double[] view;
  private final double[] boardGlow = new double[3];
  private final double[] metalGlow = new double[3];
  private final double[] share = new double[Light.SECTORS];
  private final double[] skyline = new double[Light.SECTORS];
  private final double[] spec = new double[3];
  private final double[] diffuse = new double[3];

  public Shader(MetalSpec m, Mask board, Light light, double[] view, Horizon horizon) {
    this.roughness =
        new double[] {
          m.solderRoughness(),
          m.leadRoughness(),
          m.landRoughness(),
          MASK_ROUGHNESS,
          MATTE_ROUGHNESS,
          DULL_ROUGHNESS
        };
    this.lobes = new LightTable[roughness.length];
    for (int k = 0; k < lobes.length; k++) {
      lobes[k] = new LightTable(light, view, roughness[k]);
    }
    this.matte = new LightTable(light, view, 0);
    this.gloss = new LightTable(light, view, POOL_ROUGHNESS);
    this.horizon = horizon;
    this.light = light;
    this.view = view;
    glow(board);
  }

  /** What shiny solder sees of board and neighbours, on the whole. */
  private void glow(Mask board) {
    matte.look(0, 0, 1, null, diffuse);
    double[] mask = board.laminate;
    for (int c = 0; c < 3; c++) {
      boardGlow[c] = diffuse[c] * (0.6 * mask[c] + 0.4 * new double[] {0.30, 0.24, 0.12}[c]);
      metalGlow[c] = 0.35 * diffuse[c];
    }
  }

  /** Adds the hit's light to rgb. */
  void shade(Hit hit, double[] rgb) {
    boolean shadowed = !hit.aloft && horizon.shares(hit.u, hit.v, hit.z, skyline, share);
    if (hit.aloft) {
      Arrays.fill(skyline, 0);
    }
    double[] shares = shadowed ? share : null;
    LightTable lobe = lobes[hit.surface];
    lobe.look(hit.nu, hit.nv, hit.nz, shares, spec);
    if (hit.material.metal) {
      mirror(hit, rgb);
      film(hit, shares, rgb);
      return;
    }
    film(hit, shares, rgb);
    matte.look(hit.nu, hit.nv, hit.nz, shares, diffuse);
    double bounce = shadowed ? BOUNCE * hidden() : 0;
    double gloss = hit.surface == MASK ? RESIN : 0.6 * RESIN;
    matteOf(hit, rgb, bounce, gloss);
  }

  private void matteOf(Hit hit, double[] rgb, double bounce, double gloss) {
    rgb[0] += hit.red * (diffuse[0] + bounce * metalGlow[0]) + gloss * spec[0];
    rgb[1] += hit.green * (diffuse[1] + bounce * metalGlow[1]) + gloss * spec[1];
    rgb[2] += hit.blue * (diffuse[2] + bounce * metalGlow[2]) + gloss * spec[2];
  }

  /** Flux residue has a gloss of its own. */
  private void film(Hit hit, double[] shares, double[] rgb) {
    if (hit.film > 0) {
      lobes[MASK].look(hit.nu, hit.nv, hit.nz, shares, diffuse);
      double share = RESIN * Math.min(1, 1.5 * hit.film);
      for (int c = 0; c < 3; c++) {
        rgb[c] += share * diffuse[c];
      }
    }
    if (hit.pool > 0) {
      glare(hit, shares, rgb);
    }
  }

  /** A pool mirrors the lamps at its own surface, whatever lies below. */
  private void glare(Hit hit, double[] shares, double[] rgb) {
    double up = 1 / Math.sqrt(1 + hit.poolU * hit.poolU + hit.poolV * hit.poolV);
    gloss.look(hit.poolU * up, hit.poolV * up, up, shares, diffuse);
    for (int c = 0; c < 3; c++) {
      rgb[c] += RESIN * hit.pool * diffuse[c];
    }
  }

  private double hidden() {
    double sum = 0;
    for (double s : share) {
      sum += 1 - s;
    }
    return sum / Light.SECTORS;
  }

  /** Metal: the lamps' lobe, and where the mirrored line of sight is blocked, what blocks it. */
  private void mirror(Hit hit, double[] rgb) {
    double nv = hit.nu * view[0] + hit.nv * view[1] + hit.nz * view[2];
    double ru = 2 * nv * hit.nu - view[0];
    double rv = 2 * nv * hit.nv - view[1];
    double rz = 2 * nv * hit.nz - view[2];
    double wall = Horizon.sine(skyline[light.sector(ru, rv)]);
    double soft = roughness[hit.surface] + 0.04;
    double blocked = smooth((wall + soft - rz) / (2 * soft));
    double board = smooth((soft - rz) / (2 * soft));
    for (int c = 0; c < 3; c++) {
      double seen = blocked * (board * boardGlow[c] + (1 - board) * metalGlow[c] * 0.6);
      double colour = c == 0 ? hit.red : c == 1 ? hit.green : hit.blue;
      rgb[c] += colour * (spec[c] + seen);
    }
  }

  private static double smooth(double t) {
    double x = Math.max(0, Math.min(1, t));
    return x * x * (3 - 2 * x);
  }
}
