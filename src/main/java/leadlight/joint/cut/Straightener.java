package leadlight.joint.cut;

import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.row.Lead;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;

/** Cuts each joint out of the photo in row coordinates. */
public final class Straightener {

  private final RowSpec spec;
  private final List<Lead> leads;

  public Straightener(RowSpec spec, List<Lead> leads) {
    this.spec = spec;
    this.leads = leads;
  }

  public List<JointPatch> patches(Frame photo) {
    return patches(photo, List.of());
  }

  /**
   * The same, where the joints were cut about the same lands before.
   *
   * @param before of these, the joints of leads that are where they were are taken as they are
   */
  public List<JointPatch> patches(Frame photo, List<JointPatch> before) {
    return IntStream.range(0, leads.size())
        .parallel()
        .mapToObj(
            i ->
                !before.isEmpty() && before.get(i).lead().equals(leads.get(i))
                    ? before.get(i)
                    : patch(photo, i))
        .toList();
  }

  private JointPatch patch(Frame photo, int index) {
    Lead lead = leads.get(index);
    Vector across = acrossPerPitch(index);
    double pitchPx = across.length();
    Vector along = Vector.between(lead.landHeelPx(), lead.landToePx()).unit().times(pitchPx);
    double offset = place(across, along, lead.landToePx(), lead.toePx()).x;
    double heelOffset = place(across, along, lead.landHeelPx(), lead.heelPx()).x;
    PointPx landAtToe = shifted(lead.toePx(), across, -offset);
    Planes own = cut(photo, lead.toePx(), across, along);
    Planes land = cut(photo, landAtToe, across, along);
    return new JointPatch(
        lead,
        own.light,
        own.redGreen,
        own.yellowBlue,
        land.light,
        land.redGreen,
        land.yellowBlue,
        offset,
        heelOffset,
        place(across, along, lead.toePx(), lead.landToePx()).y,
        place(across, along, lead.toePx(), lead.heelPx()).y,
        place(across, along, lead.toePx(), lead.landHeelPx()).y,
        pitchPx,
        across.x,
        across.y);
  }

  /** One nominal pitch along the row, in pixels, from the neighbours' lands. */
  private Vector acrossPerPitch(int index) {
    int before = Math.max(0, index - 1);
    int after = Math.min(leads.size() - 1, index + 1);
    double mm = Math.abs(spec.lands().get(after).uMm() - spec.lands().get(before).uMm());
    return Vector.between(leads.get(before).landToePx(), leads.get(after).landToePx())
        .times(spec.pitchMm() / mm);
  }

  /** Solves to = from + x across + y along. */
  private static Vector place(Vector across, Vector along, PointPx from, PointPx to) {
    Vector d = Vector.between(from, to);
    double det = across.x * along.y - across.y * along.x;
    return new Vector(
        (d.x * along.y - d.y * along.x) / det, (across.x * d.y - across.y * d.x) / det);
  }

  private static PointPx shifted(PointPx from, Vector step, double times) {
    return new PointPx(from.x() + step.x * times, from.y() + step.y * times);
  }

  private static Planes cut(Frame photo, PointPx origin, Vector across, Vector along) {
    double step = 1.0 / PatchGrid.DENSITY;
    Homography map =
        new Homography(
            across.x * step,
            along.x * step,
            origin.x() - across.x * PatchGrid.X_HALF + along.x * PatchGrid.Y_FROM,
            across.y * step,
            along.y * step,
            origin.y() - across.y * PatchGrid.X_HALF + along.y * PatchGrid.Y_FROM,
            0,
            0,
            1);
    return Planes.of(photo.straightened(map, PatchGrid.WIDTH, PatchGrid.HEIGHT));
  }

  private record Planes(float[] light, float[] redGreen, float[] yellowBlue) {

    static Planes of(ColourPatch patch) {
      float[] red = patch.red().data();
      float[] green = patch.green().data();
      float[] blue = patch.blue().data();
      float[] light = new float[red.length];
      float[] redGreen = new float[red.length];
      float[] yellowBlue = new float[red.length];
      for (int i = 0; i < red.length; i++) {
        light[i] = (red[i] + green[i] + blue[i]) / 3;
        redGreen[i] = red[i] - green[i];
        yellowBlue[i] = (red[i] + green[i]) / 2 - blue[i];
      }
      return new Planes(light, redGreen, yellowBlue);
    }
  }

  private record Vector(double x, double y) {

    static Vector between(PointPx from, PointPx to) {
      return new Vector(to.x() - from.x(), to.y() - from.y());
    }

    double length() {
      return Math.hypot(x, y);
    }

    Vector times(double factor) {
      return new Vector(x * factor, y * factor);
    }

    Vector unit() {
      return times(1 / length());
    }
  }
}
