package leadlight.scene.legs;

import leadlight.scene.chance.Grain;
import leadlight.scene.light.Bump;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Material;

/** The board's face around anchor legs: lands, open holes, mask. */
final class LegBoard {

  static final double THICK_MM = 1.6;

  private static final double RIM_MM = 0.025;

  /** How fast light fades down an open barrel. Common practice, no source. */
  static final double FADE_MM = 0.3;

  private final LegSceneSpec spec;
  private final Bump bumps;

  LegBoard(LegSceneSpec spec, Bump bumps) {
    this.spec = spec;
    this.bumps = bumps;
  }

  /** Bare land, hole, or the mask beside the land. */
  void copper(LegPlan plan, double[] ray, Hit best) {
    double x = ray[0] - plan.uMm();
    double y = ray[1] - plan.vMm();
    double land = plan.land().inside(x, y);
    if (land <= 0) {
      mask(ray, best, -land);
      return;
    }
    if (plan.hole().inside(x, y) > 0) {
      barrel(plan, ray, best);
      return;
    }
    face(ray, best);
    best.paint(spec.finish());
    best.surface = Shader.LAND;
    double worn = 1 - 0.1 * (0.5 + 0.5 * Grain.cloud(spec.seed() + 6, 9 * best.u, 9 * best.v));
    best.scale(worn, worn, worn);
    double hole = -plan.hole().inside(x, y);
    double round = Math.max(0, 1 - Math.min(land, hole) / 0.025);
    best.normal(-0.3 * round * x, -0.3 * round * y, 1);
    bumps.lean(best, 0.03, 0.012);
  }

  private static void face(double[] ray, Hit best) {
    best.u = ray[0];
    best.v = ray[1];
    best.z = 0;
    best.normal(0, 0, 1);
  }

  /** Down an open hole: the plated wall, ever darker, and at its end nothing. */
  private void barrel(LegPlan plan, double[] ray, Hit best) {
    face(ray, best);
    for (double z = -0.02; z > -THICK_MM; z -= 0.02) {
      double x = ray[0] + ray[2] * z - plan.uMm();
      double y = ray[1] + ray[3] * z - plan.vMm();
      if (plan.hole().inside(x, y) <= 0) {
        best.paint(Material.LAMINATE);
        best.surface = Shader.MATTE;
        double light = 0.8 * Math.exp(z / FADE_MM);
        best.red = light * spec.finish().red;
        best.green = light * spec.finish().green;
        best.blue = light * spec.finish().blue;
        return;
      }
    }
    best.paint(Material.BLACK_PLASTIC);
    best.surface = Shader.MATTE;
    best.scale(0.3, 0.3, 0.3);
  }

  /** The mask, and the bare laminate of its opening; how far from the land. */
  void mask(double[] ray, Hit best, double fromLand) {
    face(ray, best);
    double fromRim = fromLand - spec.openingMm();
    if (fromRim < 0) {
      best.paint(Material.LAMINATE);
      best.surface = Shader.MATTE;
      return;
    }
    best.material = Material.MASK;
    best.surface = Shader.MASK;
    boolean pour = Grain.smooth(spec.seed() + 71, 0.22 * best.u, 0.22 * best.v) > 0.1;
    double[] colour = pour ? spec.mask().copper : spec.mask().laminate;
    double mottle = 1 + 0.07 * Grain.cloud(spec.seed() + 7, 1.3 * best.u, 1.3 * best.v);
    best.red = colour[0] * mottle;
    best.green = colour[1] * mottle;
    best.blue = colour[2] * mottle;
    bumps.lean(best, 0.012, 0.03);
    if (fromRim < RIM_MM) {
      bumps.lean(best, 0.4 * (1 - fromRim / RIM_MM), 0.05);
    }
  }
}
