package leadlight.scene.solids;

import leadlight.scene.chance.Grain;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.BodySpec;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.SceneSpec;

/** What moulding and stamping leave on a body: ejector marks, recesses, windows in a shell. */
final class BodyMarks {

  private static final double RIM_MM = 0.05;
  private static final double SPACE_MM = 1.7;

  private final BodySpec body;
  private final long seed;

  BodyMarks(SceneSpec spec) {
    this.body = spec.body();
    this.seed = spec.seed() + 33;
  }

  /** Marks the top of the plastic: shallow discs and recesses in a line along its front. */
  void plastic(Hit hit, double fromFace) {
    int k = (int) Math.floor(hit.u / SPACE_MM);
    if (Grain.hash(seed, 1, k) >= body.pockets()) {
      return;
    }
    double u = hit.u - (k + 0.3 + 0.4 * Grain.hash(seed, 2, k)) * SPACE_MM;
    double v = fromFace - 0.45 - 0.5 * Grain.hash(seed, 3, 0);
    if (Grain.hash(seed, 4, 0) < 0.5) {
      double radius = 0.22 + 0.2 * Grain.hash(seed, 5, 0);
      double r = Math.sqrt(u * u + v * v);
      rim(hit, radius - r, -u / (r + 1e-9), v / (r + 1e-9), 0.97);
    } else {
      double du = 0.28 - Math.abs(u);
      double dv = 0.18 - Math.abs(v);
      boolean side = du < dv;
      rim(hit, Math.min(du, dv), side ? -Math.signum(u) : 0, side ? 0 : Math.signum(v), 0.55);
    }
  }

  /** Windows of a shell, through which the plastic shows in shade. */
  void shell(Hit hit, double fromEdge) {
    int k = (int) Math.floor(hit.u / (2.2 * SPACE_MM));
    if (Grain.hash(seed, 6, k) >= body.pockets()) {
      return;
    }
    double u = Math.abs(hit.u - (k + 0.5) * 2.2 * SPACE_MM);
    double v = Math.abs(fromEdge - 0.75);
    double in = Math.min(0.6 - u, 0.28 - v);
    if (in > 0) {
      hit.paint(Material.BLACK_PLASTIC);
      hit.surface = Shader.MATTE;
      double dark = 0.4 + 0.6 * Math.min(1, in / 0.3);
      hit.scale(dark, dark, dark);
      hit.plain = false;
    } else if (in > -RIM_MM) {
      hit.plain = false;
      hit.normal(hit.nu + 0.2 * (0.6 - u < 0.28 - v ? 1 : 0), hit.nv + 0.2, hit.nz);
    }
  }

  /** Leans the normal inwards on a step down; in is the distance inside it. */
  private static void rim(Hit hit, double in, double towardsU, double towardsV, double floor) {
    if (in < -RIM_MM) {
      return;
    }
    hit.plain = false;
    if (Math.abs(in) < RIM_MM) {
      double lean = 0.5 * (1 - Math.abs(in) / RIM_MM);
      hit.normal(hit.nu + lean * towardsU, hit.nv + lean * towardsV, hit.nz);
    }
    if (in > 0) {
      double shade = floor + (1 - floor) * Math.min(1, in / 0.4);
      hit.scale(shade, shade, shade);
    }
  }
}
