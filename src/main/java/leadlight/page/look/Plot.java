package leadlight.page.look;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.picture.JointView;
import leadlight.model.picture.ProfileBand;
import leadlight.model.picture.RowView;

/**
 * The light along a lead as a plot that stands upright beside the close-up, so that a height in the
 * plot is the same place in the picture. A pitch is {@link #PITCH} units; light runs to the right
 * over {@link #WIDTH} units.
 *
 * @param topUnits the window's upper edge, units from the toe
 * @param heightUnits the window's height
 * @param own points of this joint's line
 * @param typical points of the row's typical line
 * @param bands the stretches that are judged
 */
public record Plot(
    double topUnits, double heightUnits, String own, String typical, List<BandView> bands) {

  public static final int PITCH = 100;
  public static final int WIDTH = 200;
  private static final double LEAST_LIGHT = -0.15;
  private static final double MOST_LIGHT = 1.25;
  private static final double MOST_ABOVE = 2.0;

  /**
   * A stretch.
   *
   * @param id its name
   * @param letter stands in the plot
   * @param yUnits upper edge
   * @param heightUnits height
   * @param mean mean light of this joint
   * @param typicalMean mean light of the typical joint
   */
  public record BandView(
      String id,
      String letter,
      double yUnits,
      double heightUnits,
      double mean,
      double typicalMean) {}

  public static Plot of(RowView view, JointView joint) {
    double end = view.yPitch(view.typicalProfile().size() - 1);
    double top = Math.max(view.yFromPitch(), Math.max(view.heelPitch() - 0.3, -MOST_ABOVE));
    double bottom = Math.min(end, Math.max(view.aheadPitch(), 0) + 0.4);
    List<BandView> bands = new ArrayList<>();
    for (ProfileBand band : view.bands()) {
      bands.add(
          new BandView(
              band.id(),
              String.valueOf((char) ('A' + bands.size())),
              PITCH * band.fromPitch(),
              PITCH * (band.toPitch() - band.fromPitch()),
              mean(view, joint.profile(), band),
              mean(view, view.typicalProfile(), band)));
    }
    return new Plot(
        PITCH * top,
        PITCH * (bottom - top),
        line(view, joint.profile()),
        line(view, view.typicalProfile()),
        bands);
  }

  private static double mean(RowView view, List<Double> profile, ProfileBand band) {
    double sum = 0;
    int count = 0;
    for (int i = 0; i < profile.size(); i++) {
      if (view.yPitch(i) >= band.fromPitch() && view.yPitch(i) <= band.toPitch()) {
        sum += profile.get(i);
        count++;
      }
    }
    return count == 0 ? 0 : sum / count;
  }

  private static String line(RowView view, List<Double> profile) {
    StringBuilder points = new StringBuilder();
    for (int i = 0; i < profile.size(); i++) {
      points
          .append(Math.round(lightUnits(profile.get(i))))
          .append(',')
          .append(Math.round(PITCH * view.yPitch(i)))
          .append(' ');
    }
    return points.toString().strip();
  }

  /** Where a light lies, units from the left. */
  public static double lightUnits(double light) {
    double kept = Math.max(LEAST_LIGHT, Math.min(MOST_LIGHT, light));
    return WIDTH * (kept - LEAST_LIGHT) / (MOST_LIGHT - LEAST_LIGHT);
  }
}
