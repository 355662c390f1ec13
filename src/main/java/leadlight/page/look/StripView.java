package leadlight.page.look;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.FindingKind;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.report.strip.StripGeometry;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/**
 * One straightened strip of the row as the page shows it.
 *
 * @param id name within the page
 * @param uri the picture, without any mark
 * @param widthPx width of the picture
 * @param heightPx height of the picture
 * @param pitchPx pitch in the picture
 * @param pins indexes of the joints in reading order
 * @param places their middles, pixels from the left
 * @param ties bridges between neighbours that the strip shows
 */
public record StripView(
    String id,
    String uri,
    int widthPx,
    int heightPx,
    double pitchPx,
    List<Integer> pins,
    List<Double> places,
    List<Tie> ties) {

  private static final int QUALITY = 88;
  private static final int OUTSIDE = 0xe4e4e4;

  /** A bridge from one place to another, pixels from the left. */
  public record Tie(double fromPx, double toPx) {}

  public static StripView of(
      StripGeometry geometry, int number, List<GradedJoint> joints, double pitchMm, Frame picture) {
    List<Integer> strip = geometry.strips().get(number);
    int width = geometry.widthPx(strip);
    int height = geometry.heightPx();
    List<Double> places = strip.stream().map(i -> geometry.acrossPx(strip, i)).toList();
    return new StripView(
        "strip-" + number,
        Assets.dataUri("image/jpeg", cut(geometry, strip, picture)),
        width,
        height,
        pitchMm * geometry.pxPerMm(),
        strip,
        places,
        ties(strip, places, joints));
  }

  /** The straightened piece as JPEG, without any mark. */
  static byte[] cut(StripGeometry geometry, List<Integer> strip, Frame picture) {
    int width = geometry.widthPx(strip);
    int height = geometry.heightPx();
    try (Canvas canvas = new Canvas(width, height, OUTSIDE)) {
      canvas.pasteStraightened(picture, geometry.toPhoto(strip), 0, 0, width, height);
      return canvas.jpeg(QUALITY);
    }
  }

  private static List<Tie> ties(
      List<Integer> strip, List<Double> places, List<GradedJoint> joints) {
    List<Tie> ties = new ArrayList<>();
    for (int i = 0; i < strip.size(); i++) {
      for (Finding finding : joints.get(strip.get(i)).findings()) {
        if (finding.kind() == FindingKind.BRIDGE && finding.pins().size() == 2) {
          int other = strip.indexOf(finding.pins().get(1) - 1);
          if (other > i) {
            ties.add(new Tie(places.get(i), places.get(other)));
          }
        }
      }
    }
    return ties;
  }

  /** Left edge of a pin's column as a share of the width, and the column's width. */
  public double leftPercent(int index) {
    return 100 * (places.get(index) - columnPx(index) / 2) / widthPx;
  }

  public double widthPercent(int index) {
    return 100 * columnPx(index) / widthPx;
  }

  private double columnPx(int index) {
    double before = index > 0 ? places.get(index) - places.get(index - 1) : Double.MAX_VALUE;
    double after =
        index + 1 < places.size() ? places.get(index + 1) - places.get(index) : Double.MAX_VALUE;
    return Math.min(before, after);
  }
}
