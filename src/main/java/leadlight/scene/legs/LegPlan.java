package leadlight.scene.legs;

import java.util.Locale;
import leadlight.scene.chance.Grain;

/**
 * One anchor leg as soldered. Own frame: x, y from the middle of its land, as seen; z up from the
 * board's face that is photographed.
 *
 * @param number 1 to n
 * @param uMm middle of the land in the scene
 * @param vMm the same, down
 * @param land outline of the copper
 * @param hole outline of the hole
 * @param leg the leg's section and how it stands
 * @param condition what was drawn
 * @param solder where solder is
 */
record LegPlan(
    int number,
    double uMm,
    double vMm,
    Slot land,
    Slot hole,
    Stand leg,
    Condition condition,
    Fill solder) {

  /** What a leg may look like. */
  enum Condition {
    /** Wetted all round; the land may be covered in part. */
    FILLED,
    /** Solder on one side only; on the other the hole is open. */
    PART_WETTED,
    /** Solder in the hole alone, below the board's face. */
    RECESSED,
    /** A hole in the solder. */
    VOID,
    /** No solder. */
    UNSOLDERED,
    /** A lump that hides leg and ring. */
    EXCESS,
    /** Solder that melted on land and hole and never wetted the leg: a moat around it. */
    CAPPED;

    String id() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
  }

  /**
   * The leg.
   *
   * @param widthMm of its section along x
   * @param heightMm along y
   * @param xMm its middle from the land's
   * @param yMm the same, down
   * @param turnRad about its own axis
   * @param tipMm its end above the face; below 0 it ends in the hole
   */
  record Stand(
      double widthMm, double heightMm, double xMm, double yMm, double turnRad, double tipMm) {

    /** How deep a place lies inside the section, negative outside. */
    double inside(double x, double y) {
      double cos = Math.cos(turnRad);
      double sin = Math.sin(turnRad);
      double a = Math.abs((x - xMm) * cos + (y - yMm) * sin) - widthMm / 2;
      double b = Math.abs((y - yMm) * cos - (x - xMm) * sin) - heightMm / 2;
      double out = Math.hypot(Math.max(0, a), Math.max(0, b));
      return out > 0 ? -out : -Math.max(a, b);
    }
  }

  /**
   * The solder.
   *
   * @param gapFromDeg first direction of the open part, from x towards y
   * @param gapDeg how wide it is, 0 for none
   * @param spread share of the ring, from the hole's edge outward, that solder covers on the mean
   * @param ragged how much that differs from direction to direction
   * @param climbMm height at the leg; in a recessed hole at the barrel below the face, negative
   * @param pressurePerMm of the surface: above 0 it bulges
   * @param moatMm width of a gap around the leg that solder did not wet
   * @param voidMm radius of a hole in the solder, 0 for none
   * @param voidDeg direction in which it lies
   */
  record Fill(
      double gapFromDeg,
      double gapDeg,
      double spread,
      double ragged,
      double climbMm,
      double pressurePerMm,
      double moatMm,
      double voidMm,
      double voidDeg) {}

  private static final double BOWS = 3;

  boolean soldered() {
    return condition != Condition.UNSOLDERED;
  }

  /** Whether a direction lies in the part without solder. */
  boolean open(double x, double y) {
    if (!soldered()) {
      return true;
    }
    double turn = Math.toDegrees(Math.atan2(y, x)) - solder.gapFromDeg();
    return turn - 360 * Math.floor(turn / 360) < solder.gapDeg();
  }

  /** Share of the ring that solder covers in a direction; above 1 to the land's edge. */
  double reach(double x, double y, long seed) {
    if (condition == Condition.RECESSED || open(x, y)) {
      return 0;
    }
    double length = Math.max(1e-9, Math.hypot(x, y));
    double bow = Grain.cloud(seed + 31L * number, BOWS * x / length + 7, BOWS * y / length + 7);
    return solder.spread() + solder.ragged() * bow;
  }

  /** Whether a place lies in the hole in the solder. */
  boolean inVoid(double x, double y) {
    if (solder.voidMm() <= 0) {
      return false;
    }
    double angle = Math.toRadians(solder.voidDeg());
    double dx = Math.cos(angle);
    double dy = Math.sin(angle);
    double at = 0.55 * hole.reach(dx, dy) + 0.45 * legReach(dx, dy);
    return Math.hypot(x - at * dx, y - at * dy) < solder.voidMm();
  }

  /** From the land's middle to where the leg ends in a direction. */
  double legReach(double dx, double dy) {
    double reach = 0;
    double far = hole.reach(dx, dy);
    for (double at = 0; at < far; at += 0.01) {
      if (leg.inside(at * dx, at * dy) > 0) {
        reach = at;
      }
    }
    return reach;
  }

  /** Whether solder covers a place beside the leg. */
  boolean wet(double x, double y, long seed) {
    if (land.inside(x, y) <= 0 || open(x, y) || inVoid(x, y)) {
      return false;
    }
    if (leg.inside(x, y) > -solder.moatMm() && solder.moatMm() > 0) {
      return false;
    }
    if (hole.inside(x, y) > 0) {
      return true;
    }
    return share(x, y) < reach(x, y, seed);
  }

  /** How far a place lies from the hole's edge to the land's, 0 to 1. */
  double share(double x, double y) {
    double length = Math.max(1e-9, Math.hypot(x, y));
    double inner = hole.reach(x / length, y / length);
    double outer = land.reach(x / length, y / length);
    return (length - inner) / Math.max(1e-6, outer - inner);
  }
}
