package leadlight.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import leadlight.joint.cut.JointPatch;
import leadlight.joint.cut.PatchGrid;
import leadlight.joint.cut.Stats;
import leadlight.joint.cut.Zone;
import leadlight.joint.signal.RowSignals;
import leadlight.joint.signal.ToeSignals;
import leadlight.model.Homography;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.JointView;
import leadlight.model.picture.Plane;
import leadlight.model.picture.RowView;
import leadlight.model.row.Lead;
import leadlight.numeric.Quantiles;

/** From the straightened joints to what people are shown of them. */
final class RowViewMaker {

  private final RowSignals row;

  RowViewMaker(RowSignals row) {
    this.row = row;
  }

  RowView view() {
    List<double[]> profiles = row.patches().stream().map(this::profile).toList();
    List<JointView> joints = new ArrayList<>();
    for (int i = 0; i < profiles.size(); i++) {
      joints.add(new JointView(pitchToPhoto(row.patches().get(i)), list(profiles.get(i))));
    }
    return new RowView(
        joints,
        typical(),
        list(typicalProfile(profiles)),
        ToeSignals.bands(row.geometry()),
        -PatchGrid.X_HALF,
        PatchGrid.Y_FROM,
        PatchGrid.DENSITY,
        row.geometry().heelY(),
        row.geometry().ahead());
  }

  private double[] profile(JointPatch patch) {
    double half = ToeSignals.leadHalf(row.geometry());
    float[] light = row.light().levelled(patch.light());
    return Stats.smoothed(
        new Zone(light, -half, half, PatchGrid.Y_FROM, PatchGrid.Y_TO).alongLead());
  }

  private static double[] typicalProfile(List<double[]> profiles) {
    double[] typical = new double[profiles.get(0).length];
    for (int y = 0; y < typical.length; y++) {
      int at = y;
      typical[y] = Quantiles.middle(profiles.stream().mapToDouble(p -> p[at]).toArray());
    }
    return typical;
  }

  private static List<Double> list(double[] values) {
    return Arrays.stream(values).boxed().toList();
  }

  private static Homography pitchToPhoto(JointPatch patch) {
    Lead lead = patch.lead();
    double dx = lead.landToePx().x() - lead.landHeelPx().x();
    double dy = lead.landToePx().y() - lead.landHeelPx().y();
    double alongX = dx * patch.pitchPx() / Math.hypot(dx, dy);
    double alongY = dy * patch.pitchPx() / Math.hypot(dx, dy);
    return new Homography(
        patch.acrossX(),
        alongX,
        lead.toePx().x() - patch.offset() * patch.acrossX(),
        patch.acrossY(),
        alongY,
        lead.toePx().y() - patch.offset() * patch.acrossY(),
        0,
        0,
        1);
  }

  private ColourPatch typical() {
    float[] light = median(JointPatch::landLight);
    float[] redGreen = median(JointPatch::landRedGreen);
    float[] yellowBlue = median(JointPatch::landYellowBlue);
    float[] red = new float[light.length];
    float[] green = new float[light.length];
    float[] blue = new float[light.length];
    for (int i = 0; i < light.length; i++) {
      // Undoes light = (r + g + b) / 3, redGreen = r - g, yellowBlue = (r + g) / 2 - b.
      float redAndGreen = light[i] + yellowBlue[i] / 3;
      red[i] = level(redAndGreen + redGreen[i] / 2);
      green[i] = level(redAndGreen - redGreen[i] / 2);
      blue[i] = level(light[i] - yellowBlue[i] * 2 / 3);
    }
    return new ColourPatch(plane(red), plane(green), plane(blue));
  }

  private float[] median(Function<JointPatch, float[]> plane) {
    return Stats.middle(row.patches().stream().map(plane).toList());
  }

  private static float level(float value) {
    return Math.max(0, Math.min(255, value));
  }

  private static Plane plane(float[] data) {
    return new Plane(PatchGrid.WIDTH, PatchGrid.HEIGHT, data);
  }
}
