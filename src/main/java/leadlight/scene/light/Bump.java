package leadlight.scene.light;

import leadlight.scene.chance.Grain;

/** Rough metal or orange peel: leans a normal by a seeded slope. */
public record Bump(long seed) {

  /** Leans the hit's normal by up to a slope, with bumps of a size. */
  public void lean(Hit hit, double slope, double sizeMm) {
    double x = hit.u / sizeMm;
    double y = hit.v / sizeMm;
    double nu = hit.nu + slope * Grain.smooth(seed + 21, x, y);
    double nv = hit.nv + slope * Grain.smooth(seed + 22, x, y);
    hit.normal(nu, nv, hit.nz);
  }
}
