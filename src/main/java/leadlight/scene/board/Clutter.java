package leadlight.scene.board;

import java.util.List;
import leadlight.scene.chance.Grain;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.BoardSpec;
import leadlight.scene.plan.BoardSpec.Neighbour;
import leadlight.scene.plan.Material;
import leadlight.scene.plan.SceneSpec;

/** The row's neighbours as height fields: chips, shell legs in their solder, test lands. */
public final class Clutter {

  private static final int STEPS = 12;
  private static final double EDGE_MM = 0.06;
  private static final double LAND_MM = 0.26;
  private static final double SLOPE_EPS_MM = 0.004;
  private static final double STEEPEST = 6;

  private final List<Neighbour> all;
  private final BoardSpec board;
  private final long seed;

  public Clutter(SceneSpec spec) {
    this.all = spec.board().neighbours();
    this.board = spec.board();
    this.seed = spec.seed() + 70;
  }

  public double heightAt(double u, double v) {
    double h = 0;
    for (Neighbour n : all) {
      if (near(n, u, v, 0)) {
        h = Math.max(h, height(n, u - n.uMm(), v - n.vMm()));
      }
    }
    return h;
  }

  /** True within a reach of any neighbour. */
  public boolean near(double u, double v, double reachMm) {
    for (Neighbour n : all) {
      if (near(n, u, v, reachMm)) {
        return true;
      }
    }
    return false;
  }

  private static boolean near(Neighbour n, double u, double v, double reachMm) {
    double reach = reachMm + LAND_MM;
    return Math.abs(u - n.uMm()) < n.alongMm() / 2 + reach
        && Math.abs(v - n.vMm()) < n.acrossMm() / 2 + reach;
  }

  private static double height(Neighbour n, double u, double v) {
    return switch (n.kind()) {
      case CHIP -> chip(n, u, v);
      case LEG -> leg(n, u, v);
      case TEST_LAND -> 0.02 * Math.max(0, 1 - 4 * (u * u + v * v) / sq(n.alongMm()));
    };
  }

  private static double chip(Neighbour n, double u, double v) {
    boolean lying = n.alongMm() > n.acrossMm();
    double x = Math.abs(lying ? u : v);
    double y = Math.abs(lying ? v : u);
    double half = Math.max(n.alongMm(), n.acrossMm()) / 2;
    double side = Math.min(n.alongMm(), n.acrossMm()) / 2 - y;
    if (side < 0) {
      return 0;
    }
    if (x <= half) {
      double in = Math.min(side, half - x);
      double s = Math.max(0, 1 - in / EDGE_MM);
      return n.heightMm() - EDGE_MM * (1 - Math.sqrt(1 - s * s));
    }
    double run = Math.max(0, 1 - (x - half) / LAND_MM);
    return 0.75 * n.heightMm() * run * run * Math.min(1, 4 * side / LAND_MM);
  }

  private static double leg(Neighbour n, double u, double v) {
    double x = Math.abs(u) - n.alongMm() * 0.26;
    double y = Math.abs(v) - n.acrossMm() * 0.34;
    double out = x > 0 && y > 0 ? Math.sqrt(x * x + y * y) : Math.max(x, y);
    if (out < 0) {
      return n.heightMm() - 0.5 * EDGE_MM * sq(Math.max(0, 1 + out / EDGE_MM));
    }
    double run = Math.max(0, 1 - out / (0.24 * Math.min(n.alongMm(), n.acrossMm())));
    return 0.6 * n.heightMm() * run * run;
  }

  /** Follows a line of sight to the neighbours; true if it meets one above what was met. */
  public boolean meet(double[] ray, Hit hit) {
    for (Neighbour n : all) {
      double slack = n.heightMm() * (Math.abs(ray[2]) + Math.abs(ray[3]));
      if (!near(n, ray[0], ray[1], slack + 0.05)) {
        continue;
      }
      double above = n.heightMm() + 0.001;
      for (int k = 1; k <= STEPS; k++) {
        double z = (n.heightMm() + 0.001) * (1 - k / (double) STEPS);
        if (at(n, ray, z) > z + 1e-9) {
          settle(n, ray, above, z, hit);
          return true;
        }
        above = z;
      }
    }
    return false;
  }

  private static double at(Neighbour n, double[] ray, double z) {
    return height(n, ray[0] + ray[2] * z - n.uMm(), ray[1] + ray[3] * z - n.vMm());
  }

  private void settle(Neighbour n, double[] ray, double above, double below, Hit hit) {
    double hi = above;
    double lo = below;
    for (int k = 0; k < 9; k++) {
      double mid = (hi + lo) / 2;
      if (at(n, ray, mid) >= mid) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    hit.z = lo;
    hit.u = ray[0] + ray[2] * lo;
    hit.v = ray[1] + ray[3] * lo;
    double u = hit.u - n.uMm();
    double v = hit.v - n.vMm();
    double e = SLOPE_EPS_MM;
    double su = (height(n, u + e, v) - height(n, u - e, v)) / (2 * e);
    double sv = (height(n, u, v + e) - height(n, u, v - e)) / (2 * e);
    hit.normal(-limited(su), -limited(sv), 1);
    paint(n, u, v, hit);
  }

  private static double limited(double slope) {
    return Math.max(-STEEPEST, Math.min(STEEPEST, slope));
  }

  private void paint(Neighbour n, double u, double v, Hit hit) {
    hit.surface = Shader.SOLDER;
    hit.paint(Material.SOLDER);
    double half = Math.max(n.alongMm(), n.acrossMm()) / 2;
    double x = Math.abs(n.alongMm() > n.acrossMm() ? u : v);
    switch (n.kind()) {
      case CHIP -> {
        if (x < 0.62 * half) {
          boolean pale = Grain.hash(seed, (int) (100 * n.uMm()), 1) < 0.5;
          hit.paint(pale ? Material.CERAMIC : Material.BLACK_PLASTIC);
          hit.surface = Shader.MATTE;
        }
      }
      case LEG -> {
        if (hit.z > 0.65 * n.heightMm()) {
          hit.paint(Material.STEEL);
          hit.surface = Shader.LAND;
        }
      }
      case TEST_LAND -> {
        hit.paint(board.finish());
        hit.surface = Shader.LAND;
      }
    }
    double rough = 0.02 * Grain.smooth(seed, 30 * hit.u, 30 * hit.v);
    hit.normal(hit.nu + rough, hit.nv - rough, hit.nz);
  }

  private static double sq(double x) {
    return x * x;
  }
}
