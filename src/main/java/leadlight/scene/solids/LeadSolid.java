package leadlight.scene.solids;

import leadlight.scene.light.Hit;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;

/** One lead: a foot with rounded upper edges, and a bend that rises into the body. */
public final class LeadSolid {

  private static final double BEND_FROM = 0.02;
  private static final double BEND_TO = 0.82;

  public final boolean present;
  private final int pin;
  private final RowLayout row;
  private final double half;
  private final double length;
  private final double edge;
  private final double bottom;
  private final double thickness;
  private final double toeUp;
  private final double exit;
  private final double run;
  private final double shift;
  private final double cos;
  private final double sin;
  private final double roll;
  private final double crown;

  public LeadSolid(RowLayout row, int pin, double bottomMm) {
    JointPlan joint = row.spec.joints().get(pin);
    this.row = row;
    this.pin = pin;
    this.present = joint.condition() != Condition.MISSING;
    this.half = row.part.leadWidthMm() / 2;
    this.length = row.part.footLengthMm();
    this.edge = row.part.edgeRadiusMm();
    this.bottom = bottomMm;
    this.thickness = row.part.leadThicknessMm();
    this.toeUp = joint.pose().toeUpRad();
    this.exit = Math.max(exit(), topAt(0));
    this.run = row.spec.body().gapMm();
    this.shift = joint.pose().shiftMm();
    this.cos = Math.cos(joint.pose().skewRad());
    this.sin = Math.sin(joint.pose().skewRad());
    this.roll = joint.pose().rollRad();
    this.crown = row.spec.metal().leadCrown();
  }

  /** Where the lead leaves the body; it stays there while a raised land carries its foot. */
  private double exit() {
    double atMm = row.spec.body().exitMm();
    LiftFrame frame = row.frame(pin);
    return frame == null ? atMm : frame.ownZ(-length - row.spec.body().gapMm(), atMm);
  }

  /** Height of the upper side, b from the heel (negative in the bend). */
  public double topAt(double b) {
    if (b >= 0) {
      return bottom + thickness + toeUp * b;
    }
    double t = Math.min(1, Math.max(0, (-b / run - BEND_FROM) / (BEND_TO - BEND_FROM)));
    double from = bottom + thickness;
    return from + (exit - from) * t * t * t * (t * (6 * t - 15) + 10);
  }

  double bottomAt(double b) {
    return topAt(b) - thickness;
  }

  private double across(double u, double v) {
    double b = row.along(pin, u, v);
    double back = Math.min(1, Math.max(0, -b / run));
    return row.across(pin, u, v) + back * shift;
  }

  /** Distance inside the outline seen from above; negative outside. */
  private double inside(double a, double b) {
    return Math.min(half - Math.abs(a), length - b);
  }

  /** Height of the surface at a place, NaN beside the lead. */
  public double heightAt(double u, double v) {
    double b = row.along(pin, u, v);
    double d = inside(across(u, v), b);
    if (!present || d < 0 || b < -run - 0.3) {
      return Double.NaN;
    }
    return topAt(b) - drop(d);
  }

  private double drop(double d) {
    double s = Math.max(0, 1 - d / edge);
    return edge * (1 - Math.sqrt(1 - Math.min(1, s * s)));
  }

  /**
   * Follows a line of sight down to the lead.
   *
   * @return true if it meets the lead; place and normal are then in the hit
   */
  public boolean meet(double[] ray, Hit hit) {
    if (!present) {
      return false;
    }
    double top = Math.max(exit, topAt(length)) + 0.001;
    double low = bottom;
    double u = ray[0] + ray[2] * (bottom + thickness);
    double v = ray[1] + ray[3] * (bottom + thickness);
    double reach = half + 0.02 + Math.abs(ray[2]) * (top - low);
    if (Math.abs(across(u, v)) > reach || row.along(pin, u, v) > length + 0.1) {
      return false;
    }
    if (row.along(pin, u, v) > 0.05 + Math.abs(ray[3]) * (top - low)) {
      top = Math.max(topAt(0), topAt(length)) + 0.001;
    }
    return march(ray, top, low, hit);
  }

  private boolean march(double[] ray, double top, double low, Hit hit) {
    boolean upright = Math.abs(ray[2]) + Math.abs(ray[3]) < 1e-4;
    int steps = upright ? 1 : 10;
    double above = top;
    for (int k = 1; k <= steps; k++) {
      double z = top + (low - top) * k / steps;
      if (within(ray, z)) {
        refine(ray, above, z, hit);
        return true;
      }
      above = z;
    }
    return false;
  }

  private boolean within(double[] ray, double z) {
    double u = ray[0] + ray[2] * z;
    double v = ray[1] + ray[3] * z;
    return heightAt(u, v) >= z && z >= bottomAt(row.along(pin, u, v)) - 1e-9;
  }

  private void refine(double[] ray, double above, double below, Hit hit) {
    double hi = above;
    double lo = below;
    for (int k = 0; k < 10; k++) {
      double mid = (hi + lo) / 2;
      if (within(ray, mid)) {
        lo = mid;
      } else {
        hi = mid;
      }
    }
    hit.z = lo;
    hit.u = ray[0] + ray[2] * lo;
    hit.v = ray[1] + ray[3] * lo;
    orient(hit);
  }

  private void orient(Hit hit) {
    double a = across(hit.u, hit.v);
    double b = row.along(pin, hit.u, hit.v);
    double d = inside(a, b);
    double wall = topAt(b) - edge - hit.z;
    double s = wall > 0 ? 1 : Math.min(1, Math.max(0, 1 - d / edge));
    double out = s;
    double up = Math.sqrt(1 - s * s) + 1e-3;
    boolean atToe = length - b < half - Math.abs(a);
    double na = (atToe ? 0 : Math.signum(a) * out) + up * (roll + crown * cube(a / half));
    double nb =
        (atToe ? out : 0) + up * (crown * cube(Math.max(0, 1 - (length - b) / half)) - slope(b));
    hit.normal(na * cos + nb * sin, nb * cos - na * sin, up);
  }

  private static double cube(double x) {
    return x * x * x;
  }

  private double slope(double b) {
    return (topAt(b + 1e-3) - topAt(b - 1e-3)) / 2e-3;
  }
}
