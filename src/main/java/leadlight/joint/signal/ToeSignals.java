package leadlight.joint.signal;

import java.util.List;
import leadlight.joint.cut.LevelledPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.RowGeometry;
import leadlight.joint.cut.Signals;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.Zone;
import leadlight.model.picture.ProfileBand;

/**
 * What the land ahead of the toe shows. A wetted toe has a slope there, which a ring lamp draws as
 * a bright band across the land, a coaxial lamp as a dark one, a dome hardly (mirror rule: a facet
 * tilted by t shows what lies 2t off the view axis). Without a fillet the light changes once, by a
 * hard step at the toe, or runs in streaks along a domed deposit. So bands across count for, steps
 * and streaks along count against.
 */
public final class ToeSignals {

  private ToeSignals() {}

  /** Half the width over which light along the lead is taken, pitches. */
  public static double leadHalf(RowGeometry geometry) {
    return 0.8 * geometry.leadHalf();
  }

  /** The stretches along the lead that tell a fillet from a hard step. */
  public static List<ProfileBand> bands(RowGeometry geometry) {
    double ahead = Math.max(geometry.ahead(), 0.1);
    return List.of(
        new ProfileBand("lead-top", -0.6, -0.15),
        new ProfileBand("slope", -0.08, 0.6 * ahead),
        new ProfileBand("land-end", 0.6 * ahead, 0.92 * ahead));
  }

  static void measure(LevelledPatch joint, RowGeometry geometry, Signals into) {
    double lead = leadHalf(geometry);
    double land = 0.75 * geometry.landHalf();
    double ahead = geometry.ahead();
    band(joint, lead, ahead, into);
    sideBands(joint, geometry, into);
    texture(joint, land, ahead, into);
    colour(joint, lead, land, ahead, into);
  }

  private static void band(LevelledPatch joint, double lead, double ahead, Signals into) {
    double top = new Zone(joint.light(), -lead, lead, -0.6, -0.15).median();
    double end = new Zone(joint.light(), -lead, lead, 0.6 * ahead, 0.92 * ahead).median();
    double[] near = new Zone(joint.light(), -lead, lead, -0.08, 0.75 * ahead).alongLead();
    double[] slope =
        Stats.slope(
            Stats.smoothed(new Zone(joint.light(), -lead, lead, -0.15, 0.8 * ahead).alongLead()));
    double rise = Stats.greatest(slope);
    double fall = -Stats.least(slope);
    into.put("toe_bright_band", Stats.greatest(near) - Math.max(top, end));
    into.put("toe_dark_band", Math.min(top, end) - Stats.least(near));
    into.put("toe_step", Math.abs(top - end));
    into.put("toe_rise", rise);
    into.put("toe_fall", fall);
    into.put("toe_band_edges", Math.min(rise, fall));
    into.put(
        "toe_band_order",
        (Stats.indexOfGreatest(slope) - Stats.indexOfGreatest(Stats.negated(slope)))
            / (double) PatchGrid.DENSITY);
    double[] atToe =
        Stats.slope(Stats.smoothed(new Zone(joint.light(), -lead, lead, -0.12, 0.12).alongLead()));
    into.put("toe_edge", Math.max(Stats.greatest(atToe), -Stats.least(atToe)));
  }

  /** A wetted toe's band bends back along both sides of the lead. */
  private static void sideBands(LevelledPatch joint, RowGeometry geometry, Signals into) {
    double inner = geometry.leadHalf();
    double outer = 0.95 * geometry.landHalf();
    double left = bandEdges(joint, -outer, -inner, geometry.ahead());
    double right = bandEdges(joint, inner, outer, geometry.ahead());
    into.put("toe_side_band_low", Math.min(left, right));
    into.put("toe_side_band_high", Math.max(left, right));
  }

  private static double bandEdges(LevelledPatch joint, double x0, double x1, double ahead) {
    double[] slope =
        Stats.slope(Stats.smoothed(new Zone(joint.light(), x0, x1, -0.3, 0.8 * ahead).alongLead()));
    return Math.min(Stats.greatest(slope), -Stats.least(slope));
  }

  private static void texture(LevelledPatch joint, double land, double ahead, Signals into) {
    Zone slope = new Zone(joint.light(), -land, land, 0.05, 0.9 * ahead);
    into.put("ahead_roughness_across", slope.roughnessAcross());
    into.put("ahead_roughness_along", slope.roughnessAlong());
    into.put("ahead_bands", Stats.roughness(slope.alongLead()));
    into.put("ahead_streaks", Stats.roughness(slope.acrossLead()));
    into.put("ahead_deviation", slope.deviation());
    into.put("ahead_range", slope.quantile(0.95) - slope.quantile(0.05));
    into.put(
        "land_end_deviation",
        new Zone(joint.light(), -land, land, 0.6 * ahead, 0.92 * ahead).deviation());
  }

  private static void colour(
      LevelledPatch joint, double lead, double land, double ahead, Signals into) {
    into.put("ahead_light", aheadLessLead(joint.light(), lead, land, ahead));
    into.put("ahead_red_green", aheadLessLead(joint.redGreen(), lead, land, ahead));
    into.put("ahead_yellow_blue", aheadLessLead(joint.yellowBlue(), lead, land, ahead));
    into.put(
        "ahead_yellow",
        new Zone(joint.yellowBlue(), -land, land, 0.3 * ahead, 0.92 * ahead).median());
  }

  private static double aheadLessLead(float[] plane, double lead, double land, double ahead) {
    return new Zone(plane, -land, land, 0.45 * ahead, 0.92 * ahead).median()
        - new Zone(plane, -lead, lead, -0.6, -0.1).median();
  }
}
