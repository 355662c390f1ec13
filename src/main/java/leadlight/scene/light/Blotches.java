package leadlight.scene.light;

import leadlight.scene.chance.Grain;
import leadlight.scene.plan.MetalSpec;

/** Solder and leads that differ from place to place in shine, shade and grain. */
public final class Blotches {

  /** A blotch's soft rim, in units of the noise that draws it. */
  private static final double RIM = 0.15;

  private static final double GRAIN_MM = 0.014;

  /** Wear runs along a lead. Common practice, no source. */
  private static final double LONGER = 4;

  private final MetalSpec.Uneven uneven;
  private final Bump bumps;
  private final long seed;

  public Blotches(MetalSpec.Uneven uneven, Bump bumps, long seed) {
    this.uneven = uneven;
    this.bumps = bumps;
    this.seed = seed;
  }

  /** Each joint has blotches of its own. */
  public void solder(Hit hit, int pin) {
    if (uneven == null) {
      return;
    }
    double x = hit.u / uneven.sizeMm();
    double y = hit.v / uneven.sizeMm();
    double own = Grain.hash(seed, 1, pin) - 0.5;
    double at = 0.5 + 0.5 * Grain.cloud(seed + 2, x, y) + 0.4 * own;
    double edge = RIM * (Grain.hash(seed + 5, (int) (hit.u * 4e3), (int) (hit.v * 4e3)) - 0.5);
    if (at + edge < uneven.dull()) {
      hit.surface = Shader.DULL;
      bumps.lean(hit, uneven.grain(), GRAIN_MM);
    }
    shade(hit, uneven.shade() * (0.5 + 0.5 * Grain.cloud(seed + 8, 1.3 * x, 1.3 * y)));
  }

  public void lead(Hit hit, int pin) {
    if (uneven != null) {
      double x = hit.u / uneven.sizeMm();
      double y = hit.v / uneven.sizeMm() / LONGER;
      shade(hit, uneven.worn() * (0.5 + 0.5 * Grain.cloud(seed + 11 + pin, x, y)));
    }
  }

  private static void shade(Hit hit, double lost) {
    double left = 1 - Math.max(0, Math.min(1, lost));
    hit.scale(left, left, left);
  }
}
