package leadlight.scene.solids;

import leadlight.scene.chance.Grain;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.PartSpec;
import leadlight.scene.plan.SceneSpec;

/**
 * Outlines of lands, feet and wetted areas, exact, in the row frame; those of a raised land's joint
 * in the joint's own frame.
 */
public final class RowLayout {

  /** Below this share of the lead's width from its middle, a bare side begins. */
  private static final double BARE_SIDE = 0.2;

  public final SceneSpec spec;
  public final PartSpec part;
  private final double[] cos;
  private final double[] sin;
  private final double[] heelU;
  private final LiftFrame[] frames;

  public RowLayout(SceneSpec spec) {
    this.spec = spec;
    this.part = spec.part();
    this.cos = spec.joints().stream().mapToDouble(j -> Math.cos(j.pose().skewRad())).toArray();
    this.sin = spec.joints().stream().mapToDouble(j -> Math.sin(j.pose().skewRad())).toArray();
    this.frames = spec.joints().stream().map(j -> LiftFrame.of(part, j)).toArray(LiftFrame[]::new);
    this.heelU = new double[cos.length];
    for (int i = 0; i < cos.length; i++) {
      heelU[i] = part.landsAtMm()[i] + spec.joints().get(i).pose().shiftMm();
    }
  }

  public int leads() {
    return part.landsAtMm().length;
  }

  /** The frame of a joint whose land is raised; null where the land lies. */
  public LiftFrame frame(int i) {
    return frames[i];
  }

  public double landHeel() {
    return part.landAheadMm() - part.landLengthMm();
  }

  /** The land whose middle is nearest. */
  public int nearest(double u) {
    double[] places = part.landsAtMm();
    int guess = (int) Math.round(u / part.pitchMm());
    int i = Math.max(0, Math.min(places.length - 1, guess));
    while (i > 0 && Math.abs(places[i - 1] - u) < Math.abs(places[i] - u)) {
      i--;
    }
    while (i < places.length - 1 && Math.abs(places[i + 1] - u) < Math.abs(places[i] - u)) {
      i++;
    }
    return i;
  }

  /** Distance inside the land (negative outside), grown by some millimetres. */
  public double insideLand(int i, double u, double v, double grownMm) {
    return spec.joints().get(i).torn() ? -1 : insideOutline(i, u, v, grownMm);
  }

  /** Distance inside the outline that the land has, or had. */
  public double insideOutline(int i, double u, double v, double grownMm) {
    double radius = part.landCornerMm() + grownMm;
    double halfU = part.landWidthMm()[i] / 2 + grownMm - radius;
    double halfV = part.landLengthMm() / 2 + grownMm - radius;
    double middle = part.landAheadMm() - part.landLengthMm() / 2;
    double x = Math.abs(u - part.landsAtMm()[i]) - halfU;
    double y = Math.abs(v - middle) - halfV;
    if (x <= 0 || y <= 0) {
      return radius - Math.max(x, y);
    }
    return radius - Math.sqrt(x * x + y * y);
  }

  /** Place across the foot, 0 its middle line. */
  double across(int i, double u, double v) {
    return (u - heelU[i]) * cos[i] - (v + part.footLengthMm()) * sin[i];
  }

  /** Place along the foot, 0 its heel, footLengthMm its toe. */
  public double along(int i, double u, double v) {
    return (u - heelU[i]) * sin[i] + (v + part.footLengthMm()) * cos[i];
  }

  /** Distance inside the foot's outline, negative outside; the heel is open towards the bend. */
  double insideFoot(int i, double u, double v) {
    if (spec.joints().get(i).condition() == Condition.MISSING) {
      return -1;
    }
    double b = along(i, u, v);
    double side = part.leadWidthMm() / 2 - Math.abs(across(i, u, v));
    return Math.min(side, Math.min(part.footLengthMm() - b, b + 0.02));
  }

  /** True where the joint's own solder wets the land, or bulges over its edge. */
  public boolean wetted(int i, double u, double v) {
    JointPlan joint = spec.joints().get(i);
    if (!joint.fill().solder() || insideLand(i, u, v, joint.fill().spreadMm()) < 0) {
      return false;
    }
    if (joint.wetting().whole()) {
      return true;
    }
    double across = across(i, u, v);
    if (joint.wetting().sideBare() * across > BARE_SIDE * part.leadWidthMm()) {
      return false;
    }
    double fromToe = 1 - along(i, u, v) / part.footLengthMm();
    double curve = across / part.landWidthMm()[i];
    double ragged = 0.05 * Grain.cloud(spec.seed() + i, 3 * curve, 7) + 0.16 * curve * curve;
    return (joint.wetting().from() <= 0 || fromToe > joint.wetting().from() + ragged)
        && (joint.wetting().to() >= 1 || fromToe < joint.wetting().to() - ragged);
  }

  /** The bridge that covers a place, or null. */
  public Bridge bridgeAt(double u, double v) {
    for (Bridge bridge : spec.bridges()) {
      int i = bridge.pin() - 1;
      double from = part.landsAtMm()[i] + part.landWidthMm()[i] / 2;
      double to = part.landsAtMm()[i + 1] - part.landWidthMm()[i + 1] / 2;
      double t = (u - from) / (to - from);
      if (t < -0.3 || t > 1.3) {
        continue;
      }
      double neck = Math.max(0, 4 * t * (1 - t));
      double half = bridge.widthMm() / 2 * (1 - bridge.waist() * neck);
      half *= 1 + 0.12 * Grain.smooth(spec.seed() + i, 9 * v, 5 * t);
      if (Math.abs(v - bridge.vMm()) < half) {
        return bridge;
      }
    }
    return null;
  }
}
