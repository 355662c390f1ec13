package leadlight.scene.solids;

import java.util.Optional;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Screen;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Push;
import leadlight.scene.plan.SceneSpec;

/** The pick: a cone that rises from a ball at its tip, met exactly. */
public final class PickSolid implements Screen {

  /** Pixels as near as this to its outline are looked at closely. */
  private static final double NEAR_MM = 0.05;

  private final Push push;
  private final double[] tip;
  private final double[] axis;

  private PickSolid(Push push) {
    this.push = push;
    this.tip = push.tipMm();
    double flat = Math.cos(push.riseRad());
    this.axis =
        new double[] {
          flat * Math.sin(push.leanRad()), flat * Math.cos(push.leanRad()), Math.sin(push.riseRad())
        };
  }

  /** The pick of a scene that has one. */
  public static Optional<PickSolid> of(SceneSpec spec) {
    return Optional.ofNullable(spec.shot())
        .flatMap(shot -> Optional.ofNullable(shot.push()))
        .map(PickSolid::new);
  }

  @Override
  public boolean hides(double u, double v, double z, double du, double dv, double dz) {
    return last(new double[] {u, v, z}, new double[] {du, dv, dz}, 0) > 1e-6;
  }

  /** Follows a line of sight (u, v on the board, du/dz, dv/dz); true if it meets the pick first. */
  public boolean meet(double[] ray, Hit hit) {
    double[] from = {ray[0], ray[1], 0};
    double[] way = {ray[2], ray[3], 1};
    double z = last(from, way, 0);
    if (!(z > hit.z)) {
      hit.plain &= !(last(from, way, NEAR_MM) > 0);
      return false;
    }
    hit.u = ray[0] + z * ray[2];
    hit.v = ray[1] + z * ray[3];
    hit.z = z;
    hit.plain = false;
    hit.aloft = true;
    orient(hit);
    hit.paint(push.material());
    hit.surface = push.material().metal ? Shader.LAND : Shader.MATTE;
    return true;
  }

  private void orient(Hit hit) {
    double[] w = {hit.u - tip[0], hit.v - tip[1], hit.z - tip[2]};
    double t = Math.max(0, dot(w, axis));
    double slope = t > 0 ? push.taper() : 0;
    double[] out = {w[0] - t * axis[0], w[1] - t * axis[1], w[2] - t * axis[2]};
    double length = Math.sqrt(dot(out, out));
    hit.normal(
        out[0] / length - slope * axis[0],
        out[1] / length - slope * axis[1],
        out[2] / length - slope * axis[2]);
  }

  /**
   * Where a line meets the pick for the last time, in steps of its direction; NaN if nowhere. The
   * cone: the square of the distance from the axis is that of the radius there, a quadratic.
   */
  private double last(double[] from, double[] way, double fatter) {
    double radius = push.radiusMm() + fatter;
    double[] w = {from[0] - tip[0], from[1] - tip[1], from[2] - tip[2]};
    double along = dot(w, axis);
    double gain = dot(way, axis);
    double k = push.taper();
    double thick = radius + k * along;
    double cone =
        root(
            dot(way, way) - (1 + k * k) * gain * gain,
            dot(w, way) - along * gain - k * gain * thick,
            dot(w, w) - along * along - thick * thick,
            along,
            gain);
    double ball = root(dot(way, way), dot(w, way), dot(w, w) - radius * radius, 0, 0);
    return Double.isNaN(cone) ? ball : Double.isNaN(ball) ? cone : Math.max(cone, ball);
  }

  /** The greater root of a s^2 + 2 b s + c at which along + s gain is not below 0. */
  private static double root(double a, double b, double c, double along, double gain) {
    double square = b * b - a * c;
    if (!(a > 1e-9) || square < 0) {
      return Double.NaN;
    }
    double root = Math.sqrt(square);
    double far = (-b + root) / a;
    double near = (-b - root) / a;
    return along + far * gain >= 0 ? far : along + near * gain >= 0 ? near : Double.NaN;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
