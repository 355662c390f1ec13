package leadlight.scene.board;

import java.util.List;
import java.util.Optional;
import leadlight.scene.chance.Grain;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.Material;
import leadlight.scene.solids.RowLayout;

/** Residue, fibres, solder balls, scorched plastic, and pits in the solder. */
public final class Dust {

  /** No stain reaches farther, in its own size: 1 and 0.35 of noise. */
  private static final double FARTHEST = 1.35;

  /** Slope of a pool's rim, its contact angle: about 30 degrees. Common practice, no source. */
  private static final double RIM_LEAN = 0.6;

  private static final double POOL_EDGE = 8;

  /**
   * A pool's mirror is smooth and its lamp far brighter than white, so glare in photos is whiter
   * than Fresnel's share of a lobe this wide. Set by eye, no source.
   */
  private static final double POOL_GLARE = 6;

  private final Optional<RowLayout> row;
  private final List<Dirt> dirt;
  private final long seed;

  /**
   * Takes what lies about.
   *
   * @param row whose fillets may have pits
   */
  public Dust(Optional<RowLayout> row, List<Dirt> dirt, long seed) {
    this.row = row;
    this.dirt = dirt;
    this.seed = seed;
  }

  public double heightAt(double u, double v) {
    double h = 0;
    for (Dirt d : dirt) {
      if (d.kind() == DirtKind.BALL) {
        double r2 = sq(u - d.uMm()) + sq(v - d.vMm());
        if (r2 < sq(d.sizeMm())) {
          h = Math.max(h, d.sizeMm() + Math.sqrt(sq(d.sizeMm()) - r2));
        }
      }
    }
    return h;
  }

  /** True inside a pit of the joint's toe fillet. */
  public boolean pitted(int i, double u, double v) {
    if (row.isEmpty()) {
      return false;
    }
    RowLayout of = row.get();
    double radius = of.spec.joints().get(i).pitMm();
    if (radius <= 0) {
      return false;
    }
    double pu =
        of.part.landsAtMm()[i] + 0.2 * (Grain.hash(seed, 3, i) - 0.5) * of.part.leadWidthMm();
    double pv = of.part.landAheadMm() * (0.35 + 0.3 * Grain.hash(seed, 4, i));
    return sq(u - pu) + sq(v - pv) < sq(radius);
  }

  /** Balls and fibres in front of what was met. */
  public void meet(double[] ray, Hit hit) {
    for (int k = 0; k < dirt.size(); k++) {
      Dirt d = dirt.get(k);
      double near = Math.sqrt(sq(hit.u - d.uMm()) + sq(hit.v - d.vMm()));
      hit.plain &= near > 1.5 * d.sizeMm() + 0.3;
      if (d.kind() == DirtKind.BALL) {
        ball(ray, d, hit);
      } else if (d.kind() == DirtKind.FIBRE) {
        fibre(ray, d, k, hit);
      }
    }
  }

  private static void ball(double[] ray, Dirt d, Hit hit) {
    double z = d.sizeMm();
    double u = 0;
    double v = 0;
    double r2 = 0;
    for (int k = 0; k < 4; k++) {
      u = ray[0] + ray[2] * z;
      v = ray[1] + ray[3] * z;
      r2 = sq(u - d.uMm()) + sq(v - d.vMm());
      if (r2 >= sq(d.sizeMm())) {
        return;
      }
      z = d.sizeMm() + Math.sqrt(sq(d.sizeMm()) - r2);
    }
    if (z > hit.z) {
      hit.u = u;
      hit.v = v;
      hit.z = z;
      hit.normal(u - d.uMm(), v - d.vMm(), z - d.sizeMm() + 1e-6);
      hit.paint(Material.SOLDER);
      hit.surface = Shader.SOLDER;
    }
  }

  private void fibre(double[] ray, Dirt d, int k, Hit hit) {
    double z = Math.max(0.02, hit.z + 0.02);
    double u = ray[0] + ray[2] * z - d.uMm();
    double v = ray[1] + ray[3] * z - d.vMm();
    double turn = 2 * Math.PI * Grain.hash(seed, 5, k);
    double x = u * Math.cos(turn) + v * Math.sin(turn);
    double y = v * Math.cos(turn) - u * Math.sin(turn);
    if (Math.abs(x) > d.sizeMm()) {
      return;
    }
    double bow = d.sizeMm() * (Grain.hash(seed, 6, k) - 0.3);
    double s = x / d.sizeMm();
    double off = y - bow * s * s - 0.2 * d.sizeMm() * Math.sin(2.5 * s + k);
    double half = 0.012 + 0.008 * d.strength();
    if (Math.abs(off) < half) {
      double lean = off / half;
      hit.paint(Material.FIBRE);
      hit.surface = Shader.MATTE;
      hit.z = z;
      hit.normal(-lean * Math.sin(turn), lean * Math.cos(turn), Math.sqrt(1.05 - lean * lean));
    }
  }

  /** Amber residue over metal and board, scorch on the plastic. */
  public void stain(Hit hit) {
    for (int k = 0; k < dirt.size(); k++) {
      Dirt d = dirt.get(k);
      if (d.kind() == DirtKind.POOL) {
        pool(hit, d, k);
        continue;
      }
      boolean residue = d.kind() == DirtKind.RESIDUE;
      if (!residue && d.kind() != DirtKind.SCORCH) {
        continue;
      }
      double r2 = sq(hit.u - d.uMm()) + sq((hit.v - d.vMm()) * (residue ? 1 : 1.8));
      if (r2 > sq(FARTHEST * d.sizeMm())) {
        continue;
      }
      double r = Math.sqrt(r2) / d.sizeMm();
      double reach = 1 + 0.35 * Grain.cloud(seed + k, 5 * hit.u, 5 * hit.v);
      double depth = Math.max(0, Math.min(1, 4 * (reach - r)));
      if (depth <= 0) {
        continue;
      }
      double rim = 1 + 0.8 * Math.max(0, 1 - 6 * Math.abs(reach - r));
      double a = d.strength() * depth * (residue ? rim : 1);
      hit.scale(Math.exp(-0.35 * a), Math.exp(-0.9 * a), Math.exp(-2.2 * a));
      hit.film = residue ? Math.max(hit.film, a) : hit.film;
      if (residue && hit.surface != Shader.MATTE) {
        hit.normal(
            hit.nu + 0.1 * a * Grain.cloud(seed + 90, 12 * hit.u, 12 * hit.v),
            hit.nv + 0.1 * a * Grain.cloud(seed + 91, 12 * hit.u, 12 * hit.v),
            hit.nz);
      }
    }
  }

  /** Clear flux: faintly amber, with a surface of its own that leans most at its rim. */
  private void pool(Hit hit, Dirt d, int k) {
    double du = (hit.u - d.uMm()) / d.sizeMm();
    double dv = (hit.v - d.vMm()) / d.sizeMm();
    double r = Math.sqrt(du * du + dv * dv);
    double reach = 1 + 0.35 * Grain.cloud(seed + 20 + k, 3 * du, 3 * dv);
    if (r >= reach) {
      return;
    }
    double rim = r / reach;
    double lean = RIM_LEAN * rim * rim * rim;
    double deep = 1 - rim * rim;
    hit.pool = d.strength() * Math.min(1, POOL_EDGE * (reach - r)) * POOL_GLARE;
    hit.poolU = lean * du / (r + 1e-6) + waves(d, k, 1, du, dv);
    hit.poolV = lean * dv / (r + 1e-6) + waves(d, k, 2, du, dv);
    hit.scale(Math.exp(-0.06 * deep), Math.exp(-0.16 * deep), Math.exp(-0.4 * deep));
  }

  private double waves(Dirt d, int k, int way, double du, double dv) {
    return 0.3 * (1 - 0.5 * d.strength()) * Grain.cloud(seed + 40 + 7L * k + way, 2 * du, 2 * dv);
  }

  private static double sq(double x) {
    return x * x;
  }
}
