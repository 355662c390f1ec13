package leadlight.report.strip;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;

/**
 * How the row is laid out straight: body above, as the photo shows it (never mirrored). A long row
 * is folded into several strips, so that pins stay apart.
 */
public final class StripGeometry {

  private static final double LEAST_PITCH_PX = 46;
  private static final double MOST_PITCH_PX = 110;
  private static final double MOST_ENLARGED = 8;
  private static final double MOST_HEIGHT_PX = 520;

  /** Board shown beyond the outermost pins, in pitches. */
  private static final double BESIDE_PITCHES = 0.75;

  /** Board and body shown beyond the ends of leads and lands, in pitches. */
  private static final double BEYOND_PITCHES = 0.7;

  /** A toe or heel found farther than this from its land does not stretch the strip, in pitches. */
  private static final double STRAY_PITCHES = 1.5;

  private final RowOutcome.Found found;
  private final RowSpec spec;
  private final boolean reversed;
  private final double topMm;
  private final double bottomMm;
  private final double pxPerMm;
  private final int folds;

  /**
   * Lays a row out.
   *
   * @param widthPx how wide a strip may be
   */
  public StripGeometry(
      RowOutcome.Found found, RowSpec spec, List<GradedJoint> joints, int widthPx) {
    this.found = found;
    this.spec = spec;
    this.reversed = orientation(found.mmToPx(), spec.spanMm() / 2) < 0;
    double[] ends = ends(joints);
    this.topMm = ends[0] - BEYOND_PITCHES * spec.pitchMm();
    this.bottomMm = ends[1] + BEYOND_PITCHES * spec.pitchMm();
    double most =
        Math.min(
            Math.min(MOST_PITCH_PX, MOST_ENLARGED * found.pitchPx()),
            Math.max(LEAST_PITCH_PX, MOST_HEIGHT_PX * spec.pitchMm() / (bottomMm - topMm)));
    double pitches = spec.spanMm() / spec.pitchMm();
    int strips = 1;
    while (widthPx / (pitches / strips + 2 * BESIDE_PITCHES) < Math.min(LEAST_PITCH_PX, most)) {
      strips++;
    }
    this.folds = strips;
    double fitting = widthPx / (widestFoldMm() / spec.pitchMm() + 2 * BESIDE_PITCHES);
    this.pxPerMm = Math.min(most, fitting) / spec.pitchMm();
  }

  /** Positive if u, v turn as x, y do: pin 1 is on the left when the body is above. */
  private static double orientation(Homography mmToPx, double uMm) {
    PointPx o = mmToPx.map(uMm, 0);
    PointPx u = mmToPx.map(uMm + 0.1, 0);
    PointPx v = mmToPx.map(uMm, 0.1);
    return (u.x() - o.x()) * (v.y() - o.y()) - (u.y() - o.y()) * (v.x() - o.x());
  }

  private double[] ends(List<GradedJoint> joints) {
    Homography toMm = found.mmToPx().inverse();
    double stray = STRAY_PITCHES * spec.pitchMm();
    double top = Double.MAX_VALUE;
    double bottom = -Double.MAX_VALUE;
    for (GradedJoint joint : joints) {
      Lead lead = joint.joint().lead();
      double landToe = along(toMm, lead.landToePx());
      double landHeel = along(toMm, lead.landHeelPx());
      bottom = Math.max(bottom, landToe);
      bottom = Math.max(bottom, Math.min(along(toMm, lead.toePx()), landToe + stray));
      top = Math.min(top, landHeel);
      top = Math.min(top, Math.max(along(toMm, lead.heelPx()), landHeel - stray));
    }
    return new double[] {top, bottom};
  }

  private static double along(Homography toMm, PointPx point) {
    return toMm.map(point.x(), point.y()).y();
  }

  /** True if pin 1 is on the right with the body above. */
  public boolean reversed() {
    return reversed;
  }

  /** Indexes of the joints of each strip, in reading order from the left. */
  public List<List<Integer>> strips() {
    int count = spec.leads();
    List<List<Integer>> strips = new ArrayList<>();
    for (int fold = 0; fold < folds; fold++) {
      List<Integer> strip = new ArrayList<>();
      for (int i = fold * count / folds; i < (fold + 1) * count / folds; i++) {
        strip.add(reversed ? count - 1 - i : i);
      }
      strips.add(strip);
    }
    return strips;
  }

  private double widestFoldMm() {
    return strips().stream().mapToDouble(this::spanMm).max().orElseThrow();
  }

  private double spanMm(List<Integer> strip) {
    return Math.abs(uMm(strip.get(strip.size() - 1)) - uMm(strip.get(0)));
  }

  private double uMm(int index) {
    return spec.lands().get(index).uMm();
  }

  /** Width of a strip. */
  public int widthPx(List<Integer> strip) {
    return (int) Math.floor((spanMm(strip) + 2 * BESIDE_PITCHES * spec.pitchMm()) * pxPerMm);
  }

  /** Height of every strip. */
  public int heightPx() {
    return (int) Math.round((bottomMm - topMm) * pxPerMm);
  }

  /** Scale of the strips. */
  public double pxPerMm() {
    return pxPerMm;
  }

  /** Size in the strip over size in the photo. */
  double enlargement() {
    return pxPerMm / found.scalePxPerMm();
  }

  /** Where a pin's land lies in its strip, pixels from the left edge. */
  public double acrossPx(List<Integer> strip, int index) {
    double fromLeft = Math.abs(uMm(index) - uMm(strip.get(0)));
    return (fromLeft + BESIDE_PITCHES * spec.pitchMm()) * pxPerMm;
  }

  /** From pixels of a strip to pixels of the photo. */
  public Homography toPhoto(List<Integer> strip) {
    double step = (reversed ? -1 : 1) / pxPerMm;
    double left = uMm(strip.get(0)) - step * BESIDE_PITCHES * spec.pitchMm() * pxPerMm;
    Homography toMm =
        new Homography(step, 0, left + step / 2, 0, 1 / pxPerMm, topMm + 0.5 / pxPerMm, 0, 0, 1);
    return found.mmToPx().after(toMm);
  }

  /** Corners of the whole shown row in the photo: at pin 1 body side, then round by pin N. */
  public List<PointPx> corners() {
    double beside = BESIDE_PITCHES * spec.pitchMm();
    double end = spec.spanMm() + beside;
    Homography map = found.mmToPx();
    return List.of(
        map.map(-beside, topMm),
        map.map(end, topMm),
        map.map(end, bottomMm),
        map.map(-beside, bottomMm));
  }
}
