package leadlight.scene.legs;

import java.util.List;
import java.util.Optional;
import leadlight.scene.board.Dust;
import leadlight.scene.chance.Grain;
import leadlight.scene.light.Blotches;
import leadlight.scene.light.Bump;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Shader;
import leadlight.scene.light.Sight;
import leadlight.scene.plan.Material;

/** Finds what each line of sight meets first on a board with anchor legs. */
final class LegTracer implements Sight {

  private static final double MARGIN_MM = 0.4;

  private final LegSceneSpec spec;
  private final List<LegField> solder;
  private final LegShell shell;
  private final Dust dust;
  private final Bump bumps;
  private final LegBoard board;
  private final Blotches blotches;

  LegTracer(LegSceneSpec spec, LegShell shell, List<LegField> solder) {
    this.spec = spec;
    this.solder = List.copyOf(solder);
    this.shell = shell;
    this.dust = new Dust(Optional.empty(), spec.dirt(), spec.seed() + 60);
    this.bumps = new Bump(spec.seed());
    this.board = new LegBoard(spec, bumps);
    this.blotches = new Blotches(spec.metal().uneven(), bumps, spec.seed() + 110);
  }

  @Override
  public void trace(double[] ray, Hit best, Hit spare) {
    best.z = -9;
    best.plain = false;
    best.film = 0;
    best.pool = 0;
    shell.meet(ray, best);
    int k = near(ray[0], ray[1]);
    if (k >= 0) {
      leg(k, ray, best);
      solder(k, ray, best);
      if (best.z < -8) {
        board.copper(spec.legs().get(k), ray, best);
      }
    } else if (best.z < -8) {
      board.mask(ray, best, 1);
      best.plain = !shell.there();
    }
    dust.meet(ray, best);
    dust.stain(best);
  }

  /** The leg whose land lies at or near a place, or -1. */
  int near(double u, double v) {
    for (int k = 0; k < solder.size(); k++) {
      LegPlan plan = spec.legs().get(k);
      if (plan.land().inside(u - plan.uMm(), v - plan.vMm()) > -MARGIN_MM) {
        return k;
      }
    }
    return -1;
  }

  /** Height of the highest surface at a place, negative in a hole. */
  double heightAt(double u, double v) {
    int k = near(u, v);
    double high = shell.heightAt(u, v);
    if (k < 0) {
      return high;
    }
    LegPlan plan = spec.legs().get(k);
    double x = u - plan.uMm();
    double y = v - plan.vMm();
    if (plan.leg().inside(x, y) > 0) {
      return Math.max(high, tip(plan));
    }
    if (solder.get(k).wetAt(x, y)) {
      return Math.max(high, solder.get(k).heightAt(x, y));
    }
    return plan.hole().inside(x, y) > 0 && high <= 0 ? -LegBoard.THICK_MM / 2 : high;
  }

  private double tip(LegPlan plan) {
    return spec.shell().map(LegSceneSpec.Shell::armMm).orElse(plan.leg().tipMm());
  }

  private void leg(int k, double[] ray, Hit best) {
    LegPlan plan = spec.legs().get(k);
    LegPlan.Stand leg = plan.leg();
    double cos = Math.cos(leg.turnRad());
    double sin = Math.sin(leg.turnRad());
    double x = ray[0] - plan.uMm() - leg.xMm();
    double y = ray[1] - plan.vMm() - leg.yMm();
    double[][] slabs = {
      {x * cos + y * sin, ray[2] * cos + ray[3] * sin, leg.widthMm() / 2},
      {y * cos - x * sin, ray[3] * cos - ray[2] * sin, leg.heightMm() / 2}
    };
    double top = tip(plan);
    double high = top;
    double low = -LegBoard.THICK_MM;
    int side = -1;
    for (int i = 0; i < 2; i++) {
      double slope = Math.abs(slabs[i][1]) < 1e-9 ? 1e-9 : slabs[i][1];
      double a = (-slabs[i][2] - slabs[i][0]) / slope;
      double b = (slabs[i][2] - slabs[i][0]) / slope;
      if (Math.max(a, b) < high) {
        high = Math.max(a, b);
        side = i;
      }
      low = Math.max(low, Math.min(a, b));
    }
    if (high <= low || high <= best.z) {
      return;
    }
    best.u = ray[0] + ray[2] * high;
    best.v = ray[1] + ray[3] * high;
    best.z = high;
    double way = side < 0 ? 0 : Math.signum(slabs[side][1]);
    double nx = side == 0 ? way : 0;
    double ny = side == 1 ? way : 0;
    best.normal(nx * cos - ny * sin, nx * sin + ny * cos, side < 0 ? 1 : 0.05);
    if (side < 0) {
      crown(plan, best);
    }
    best.paint(spec.metal().lead());
    best.surface = Shader.LEAD;
    bumps.lean(best, 0.1 * spec.metal().leadRoughness() + 0.02, 0.03);
    double dark = high < 0 ? Math.exp(high / LegBoard.FADE_MM) : 1;
    double worn = dark * (0.9 + 0.1 * Grain.cloud(spec.seed() + 40 + k, 4 * best.u, 4 * best.v));
    best.scale(worn, worn, worn);
    blotches.lead(best, k);
  }

  /** Stamped legs have rounded edges. */
  private void crown(LegPlan plan, Hit hit) {
    double depth = plan.leg().inside(hit.u - plan.uMm(), hit.v - plan.vMm());
    double lean = Math.max(0, 1 - depth / 0.05) * 0.6;
    double x = hit.u - plan.uMm() - plan.leg().xMm();
    double y = hit.v - plan.vMm() - plan.leg().yMm();
    boolean across = Math.abs(x) / plan.leg().widthMm() > Math.abs(y) / plan.leg().heightMm();
    hit.normal(across ? lean * Math.signum(x) : 0, across ? 0 : lean * Math.signum(y), 1);
  }

  private void solder(int k, double[] ray, Hit best) {
    LegPlan plan = spec.legs().get(k);
    LegField field = solder.get(k);
    double z = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < 4; i++) {
      x = ray[0] + ray[2] * z - plan.uMm();
      y = ray[1] + ray[3] * z - plan.vMm();
      z = field.heightAt(x, y);
    }
    if (z < best.z || !field.wetAt(x, y)) {
      return;
    }
    best.u = x + plan.uMm();
    best.v = y + plan.vMm();
    best.z = z;
    best.normal(-field.slopeX(x, y), -field.slopeY(x, y), 1);
    best.paint(Material.SOLDER);
    best.surface = Shader.SOLDER;
    bumps.lean(best, spec.metal().solderGrain() + 0.004, 0.014);
    bumps.lean(best, 0.5 * spec.metal().solderGrain() + 0.015, 0.09);
    blotches.solder(best, plan.number());
    if (plan.condition() == LegPlan.Condition.RECESSED) {
      double dark = Math.exp(Math.min(0, z) / (2 * LegBoard.FADE_MM));
      best.scale(dark, dark, dark);
    }
  }
}
