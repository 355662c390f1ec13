package leadlight.joint.signal;

import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.Zone;
import leadlight.numeric.Quantiles;

/**
 * What lies between the lead's sides and the land's edges, and on the lead. A wetted side carries a
 * slope; an open one a gap line or the streaks of a deposit that the lead does not touch; a starved
 * one bare land for part of its length. The worse and the better side are told apart, not left and
 * right, so that a mirrored joint measures the same.
 */
final class FlankSignals {

  private FlankSignals() {}

  static void measure(LevelledPatch joint, RowGeometry geometry, Signals into) {
    double lead = geometry.leadHalf();
    double from = Math.max(0.85 * geometry.heelY(), -1.4);
    double top = new Zone(joint.light(), -0.8 * lead, 0.8 * lead, -0.6, -0.15).median();
    Flank left = Flank.of(joint, -lead - 0.02, -geometry.landHalf(), from, top);
    Flank right = Flank.of(joint, lead + 0.02, geometry.landHalf(), from, top);
    both(into, "flank_light", left.light, right.light);
    both(into, "flank_darkest", left.darkest, right.darkest);
    both(into, "flank_brightest", left.brightest, right.brightest);
    both(into, "flank_unevenness", left.unevenness, right.unevenness);
    both(into, "flank_toe_less_heel", left.toeLessHeel, right.toeLessHeel);
    both(into, "flank_yellow", left.yellow, right.yellow);
    thirds(joint, geometry, from, top, into);
    Zone onTop = new Zone(joint.light(), -0.8 * lead, 0.8 * lead, from, -0.15);
    into.put("lead_deviation", onTop.deviation());
    into.put("lead_streaks", Stats.roughness(onTop.acrossLead()));
    into.put("lead_edges", edges(joint, lead, from));
  }

  /** Each third of the foot by itself: solder may end anywhere along it. */
  private static void thirds(
      LevelledPatch joint, RowGeometry geometry, double from, double top, Signals into) {
    String[] names = {"heel", "middle", "toe"};
    double lead = geometry.leadHalf();
    double land = geometry.landHalf();
    double step = (-0.1 - from) / names.length;
    for (int i = 0; i < names.length; i++) {
      double y0 = from + i * step;
      double y1 = y0 + step;
      both(
          into,
          "flank_" + names[i] + "_light",
          new Zone(joint.light(), -land, -lead - 0.02, y0, y1).mean() - top,
          new Zone(joint.light(), lead + 0.02, land, y0, y1).mean() - top);
      both(
          into,
          "flank_" + names[i] + "_edge",
          edge(joint, -lead, y0, y1),
          edge(joint, lead, y0, y1));
    }
  }

  private static void both(Signals into, String name, double one, double other) {
    into.put(name + "_low", Math.min(one, other));
    into.put(name + "_high", Math.max(one, other));
  }

  /** Strength of the weaker of the lead's two side edges. */
  private static double edges(LevelledPatch joint, double lead, double from) {
    return Math.min(edge(joint, -lead, from, -0.15), edge(joint, lead, from, -0.15));
  }

  private static double edge(LevelledPatch joint, double x, double from, double to) {
    double[] slope =
        Stats.slope(
            Stats.smoothed(new Zone(joint.light(), x - 0.1, x + 0.1, from, to).acrossLead()));
    return Math.max(Stats.greatest(slope), -Stats.least(slope));
  }

  private record Flank(
      double light,
      double darkest,
      double brightest,
      double unevenness,
      double toeLessHeel,
      double yellow) {

    static Flank of(LevelledPatch joint, double x0, double x1, double from, double top) {
      Zone zone = new Zone(joint.light(), x0, x1, from, -0.1);
      double[] along = zone.alongLead();
      int third = Math.max(1, along.length / 3);
      double heelPart = 0;
      double toePart = 0;
      for (int i = 0; i < third; i++) {
        heelPart += along[i] / third;
        toePart += along[along.length - 1 - i] / third;
      }
      return new Flank(
          zone.mean() - top,
          Quantiles.middle(zone.leastAlongLead()) - top,
          Quantiles.middle(zone.greatestAlongLead()) - top,
          Stats.deviation(along),
          toePart - heelPart,
          new Zone(joint.yellowBlue(), x0, x1, from, -0.1).median());
    }
  }
}
