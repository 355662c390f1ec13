package leadlight.scene.legs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.scene.light.Bump;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Roof;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Material;

/** A connector's shell over the component side: its box, and the arms that carry the legs. */
final class LegShell implements Roof {

  private static final double GRAIN_MM = 0.18;
  private static final double EDGE_MM = 0.06;

  private final Optional<LegSceneSpec.Shell> shell;
  private final List<Box> arms = new ArrayList<>();
  private final Bump bumps;

  /** An upright box between two heights. */
  private record Box(double left, double top, double right, double bottom, double from, double to) {

    boolean over(double u, double v) {
      return u > left && u < right && v > top && v < bottom;
    }

    /** Height at which a line of sight enters it, or -9. */
    double enters(double[] ray) {
      double high = to;
      double low = from;
      double[][] slabs = {{ray[0], ray[2], left, right}, {ray[1], ray[3], top, bottom}};
      for (double[] slab : slabs) {
        if (Math.abs(slab[1]) < 1e-9) {
          if (slab[0] < slab[2] || slab[0] > slab[3]) {
            return -9;
          }
          continue;
        }
        double a = (slab[2] - slab[0]) / slab[1];
        double b = (slab[3] - slab[0]) / slab[1];
        high = Math.min(high, Math.max(a, b));
        low = Math.max(low, Math.min(a, b));
      }
      return high > low ? high : -9;
    }

    double steepness(double u, double v, double z, double du, double dv) {
      if (over(u, v) || z >= to) {
        return 0;
      }
      double near = 0;
      double far = 1e9;
      double[][] slabs = {{u, du, left, right}, {v, dv, top, bottom}};
      for (double[] slab : slabs) {
        double a = (slab[2] - slab[0]) / slab[1];
        double b = (slab[3] - slab[0]) / slab[1];
        near = Math.max(near, Math.min(a, b));
        far = Math.min(far, Math.max(a, b));
      }
      return near < far && far > 0 ? (to - z) / Math.max(0.01, near) : 0;
    }
  }

  LegShell(LegSceneSpec spec) {
    this.shell = spec.shell();
    this.bumps = new Bump(spec.seed() + 300);
    spec.shell().ifPresent(it -> arms(it, spec.legs()));
  }

  private void arms(LegSceneSpec.Shell it, List<LegPlan> legs) {
    arms.add(new Box(it.leftMm(), it.topMm(), it.rightMm(), it.bottomMm(), 0.05, it.heightMm()));
    for (LegPlan leg : legs) {
      double u = leg.uMm() + leg.leg().xMm();
      double v = leg.vMm() + leg.leg().yMm();
      double half = leg.leg().heightMm() / 2;
      double inner = u < it.leftMm() ? it.leftMm() : it.rightMm();
      if (u < it.leftMm() || u > it.rightMm()) {
        double from = Math.min(u, inner);
        double to = Math.max(u, inner);
        arms.add(new Box(from, v - half, to, v + half, it.armMm() - 0.3, it.armMm()));
      }
    }
  }

  /** Height of the top of what stands at a place, 0 beside it. */
  double heightAt(double u, double v) {
    double height = 0;
    for (Box box : arms) {
      height = box.over(u, v) ? Math.max(height, box.to()) : height;
    }
    return height;
  }

  /** Whether shell or arm hides a place of the board from above. */
  boolean hides(double u, double v) {
    return heightAt(u, v) > 0;
  }

  @Override
  public double steepness(double u, double v, double z, double du, double dv) {
    double most = 0;
    for (Box box : arms) {
      most = Math.max(most, box.steepness(u, v, z, du, dv));
    }
    return most;
  }

  /** Meets shell or arm, if it is the highest thing on the line of sight. */
  void meet(double[] ray, Hit best) {
    for (Box box : arms) {
      double z = box.enters(ray);
      if (z > best.z) {
        paint(ray, box, z, best);
      }
    }
  }

  private void paint(double[] ray, Box box, double z, Hit hit) {
    hit.u = ray[0] + ray[2] * z;
    hit.v = ray[1] + ray[3] * z;
    hit.z = z;
    double left = hit.u - box.left();
    double right = box.right() - hit.u;
    double top = hit.v - box.top();
    double bottom = box.bottom() - hit.v;
    double edge = Math.min(Math.min(left, right), Math.min(top, bottom));
    double lean = z < box.to() - 1e-9 ? 6 : Math.max(0, 1 - edge / EDGE_MM);
    double du = edge == left ? -1 : edge == right ? 1 : 0;
    double dv = edge == top ? -1 : edge == bottom ? 1 : 0;
    hit.normal(lean * du, lean * dv, 1);
    hit.paint(Material.TIN);
    hit.surface = Shader.LEAD;
    bumps.lean(hit, 0.03, GRAIN_MM);
  }

  boolean there() {
    return shell.isPresent();
  }
}
