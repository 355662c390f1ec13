package leadlight.scene.legs;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leadlight.model.BoardSide;
import leadlight.model.PointPx;
import leadlight.scene.camera.CameraSpec;
import leadlight.scene.camera.Projection;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.render.Truth;

/**
 * What a scene of anchor legs shows, exactly; the format of {@code benchmark/legs} and the shares
 * by direction beside it.
 */
record LegSceneTruth(
    String photo,
    int width,
    int height,
    String side,
    String part,
    double[] landMm,
    double[] holeMm,
    String lamp,
    double pxPerMm,
    double edgeBlurPx,
    boolean fluxResidue,
    List<LegTruth> legs) {

  /** Directions that are counted, five degrees each, clockwise from the land's x axis. */
  static final int SECTORS = 72;

  private static final double NEEDED_SOLDER_DEG = 270;
  private static final double NEEDED_COMPONENT_DEG = 180;
  private static final double NEEDED_COVER = 0.75;

  /** Nearer to a limit than this a leg is not counted. */
  private static final double NEAR_DEG = 15;

  private static final double NEAR_SHARE = 0.07;

  private static final int OUTLINE = 24;

  /**
   * One leg.
   *
   * @param wettedDeg of 360, how much of the leg's outline meets solder
   * @param landCovered share of the copper that solder covers
   * @param holeOpen share of the hole beside the leg that is open
   * @param hidden share of the land that shell or arm hides
   * @param wetSectors by direction, whether solder meets the leg
   * @param coveredReach by direction, share of the ring from the hole's edge that solder covers
   */
  record LegTruth(
      int leg,
      double[] centrePx,
      double[][] landPx,
      double[][] holePx,
      double[][] legPx,
      String condition,
      double wettedDeg,
      double landCovered,
      double holeOpen,
      double hidden,
      boolean cutByFrame,
      String class2,
      int[] wetSectors,
      double[] coveredReach) {}

  static LegSceneTruth of(LegSceneSpec spec, Projection camera, LegShell shell) {
    List<LegTruth> legs = new ArrayList<>();
    for (LegPlan plan : spec.legs()) {
      legs.add(truth(spec, plan, camera, shell));
    }
    LegPlan first = spec.legs().get(0);
    double blur = spec.camera().lens().blurPx();
    return new LegSceneTruth(
        spec.name() + ".jpg",
        spec.camera().widthPx(),
        spec.camera().heightPx(),
        spec.side().id(),
        spec.connector(),
        new double[] {first.land().widthMm(), first.land().heightMm()},
        new double[] {first.hole().widthMm(), first.hole().heightMm()},
        Truth.lampName(spec.lamps()),
        round(spec.camera().pxPerMm()),
        round(blur),
        spec.dirt().stream()
            .anyMatch(d -> d.kind() == DirtKind.RESIDUE || d.kind() == DirtKind.POOL),
        legs);
  }

  private static LegTruth truth(
      LegSceneSpec spec, LegPlan plan, Projection camera, LegShell shell) {
    long seed = spec.seed() + 500;
    int[] wet = new int[SECTORS];
    double[] reach = new double[SECTORS];
    int wetted = 0;
    for (int i = 0; i < SECTORS; i++) {
      double dx = Math.cos(2 * Math.PI * (i + 0.5) / SECTORS);
      double dy = Math.sin(2 * Math.PI * (i + 0.5) / SECTORS);
      wet[i] = wets(plan, dx, dy) ? 1 : 0;
      wetted += wet[i];
      reach[i] = reach(plan, dx, dy, seed);
    }
    double[] shares = shares(spec, plan, shell, seed);
    double degrees = 360.0 * wetted / SECTORS;
    double[][] land = outline(plan, plan.land(), camera);
    boolean cut = cut(land, spec.camera());
    return new LegTruth(
        plan.number(),
        at(camera, plan.uMm(), plan.vMm()),
        land,
        outline(plan, plan.hole(), camera),
        section(plan, camera),
        plan.condition().id(),
        degrees,
        round(shares[0]),
        round(shares[1]),
        round(shares[2]),
        cut,
        verdict(spec.side(), plan, degrees, shares[0]),
        wet,
        reach);
  }

  private static boolean wets(LegPlan plan, double dx, double dy) {
    if (!plan.soldered() || plan.solder().moatMm() > 0) {
      return false;
    }
    if (plan.condition() == LegPlan.Condition.EXCESS) {
      return true;
    }
    double at = plan.legReach(dx, dy) + 0.03;
    return !plan.open(dx, dy) && !plan.inVoid(at * dx, at * dy);
  }

  private static double reach(LegPlan plan, double dx, double dy, long seed) {
    if (plan.condition() == LegPlan.Condition.EXCESS) {
      return 1;
    }
    return round(Math.max(0, Math.min(1, plan.reach(dx, dy, seed))));
  }

  /** Shares of the land covered, of the hole open, of the land hidden: counted by a fine grid. */
  private static double[] shares(LegSceneSpec spec, LegPlan plan, LegShell shell, long seed) {
    double step = 0.02;
    double[] count = new double[5];
    boolean lump = plan.condition() == LegPlan.Condition.EXCESS;
    boolean recessed = plan.condition() == LegPlan.Condition.RECESSED;
    for (double y = -plan.land().heightMm() / 2; y < plan.land().heightMm() / 2; y += step) {
      for (double x = -plan.land().widthMm() / 2; x < plan.land().widthMm() / 2; x += step) {
        if (plan.land().inside(x, y) <= 0) {
          continue;
        }
        boolean wet = plan.soldered() && (lump || plan.wet(x, y, seed));
        count[4] += shell.hides(plan.uMm() + x, plan.vMm() + y) ? 1 : 0;
        if (plan.hole().inside(x, y) <= 0) {
          count[0]++;
          count[1] += wet && !recessed ? 1 : 0;
        } else if (plan.leg().inside(x, y) <= 0) {
          count[2]++;
          count[3] += wet ? 0 : 1;
        }
      }
    }
    double land = count[0] + count[2];
    return new double[] {
      count[1] / Math.max(1, count[0]), count[3] / Math.max(1, count[2]), count[4] / land
    };
  }

  /**
   * Class 2; fill is not asked, excess, a hole in the solder and a moat are matters of their own.
   */
  private static String verdict(BoardSide side, LegPlan plan, double degrees, double covered) {
    boolean solder = side == BoardSide.SOLDER;
    double needed = solder ? NEEDED_SOLDER_DEG : NEEDED_COMPONENT_DEG;
    double cover = solder ? NEEDED_COVER : 0;
    if (degrees < needed - NEAR_DEG || covered < cover - NEAR_SHARE) {
      return "defect";
    }
    boolean near = degrees < needed + NEAR_DEG || solder && covered < cover + NEAR_SHARE;
    boolean taste =
        plan.condition() == LegPlan.Condition.EXCESS
            || plan.condition() == LegPlan.Condition.VOID
            || plan.condition() == LegPlan.Condition.RECESSED;
    return near || taste ? "limit" : "acceptable";
  }

  private static boolean cut(double[][] land, CameraSpec camera) {
    for (double[] at : land) {
      if (at[0] < 0 || at[1] < 0 || at[0] > camera.widthPx() || at[1] > camera.heightPx()) {
        return true;
      }
    }
    return false;
  }

  private static double[][] outline(LegPlan plan, Slot slot, Projection camera) {
    double[][] out = new double[OUTLINE][];
    for (int i = 0; i < OUTLINE; i++) {
      double dx = Math.cos(2 * Math.PI * i / OUTLINE);
      double dy = Math.sin(2 * Math.PI * i / OUTLINE);
      double reach = slot.reach(dx, dy);
      out[i] = at(camera, plan.uMm() + reach * dx, plan.vMm() + reach * dy);
    }
    return out;
  }

  private static double[][] section(LegPlan plan, Projection camera) {
    LegPlan.Stand leg = plan.leg();
    double cos = Math.cos(leg.turnRad());
    double sin = Math.sin(leg.turnRad());
    double[][] out = new double[4][];
    for (int i = 0; i < 4; i++) {
      double x = (i == 0 || i == 3 ? -1 : 1) * leg.widthMm() / 2;
      double y = (i < 2 ? -1 : 1) * leg.heightMm() / 2;
      out[i] =
          at(
              camera,
              plan.uMm() + leg.xMm() + x * cos - y * sin,
              plan.vMm() + leg.yMm() + x * sin + y * cos);
    }
    return out;
  }

  private static double[] at(Projection camera, double u, double v) {
    PointPx point = camera.map(u, v, 0);
    return new double[] {round(point.x()), round(point.y())};
  }

  private static double round(double value) {
    return Double.parseDouble(String.format(Locale.ROOT, "%.3f", value));
  }
}
