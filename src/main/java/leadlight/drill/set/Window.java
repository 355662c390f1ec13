package leadlight.drill.set;

import java.util.Comparator;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/**
 * A straightened piece of a row, body above, as the photo shows it (never mirrored). Millimetres
 * are those of the row frame.
 */
public final class Window {

  private static final int OUTSIDE = 0xe4e4e4;
  private static final int QUALITY = 92;

  /** Neighbours that a joint is shown with, in pitches to each side of its middle. */
  private static final double JOINT_PITCHES = 2.3;

  private static final int JOINT_PX = 1000;
  private static final int ROW_PX_PER_PITCH = 100;
  private static final int MOST_PX = 3000;

  /** Board shown beyond the lands' ends, in pitches. */
  private static final double BEYOND = 0.8;

  /** Board shown beyond the outer leads of a whole row, in pitches. */
  private static final double SIDES = 0.9;

  private final Homography mmToPhoto;
  private final Homography photoToMm;
  private final List<Lead> leads;
  private final double fromMm;
  private final double topMm;
  private final double pxPerMm;
  private final int widthPx;
  private final int heightPx;
  private final int sign;

  private Window(RowOutcome.Found row, double pitchMm, double uFrom, double uTo, int widthPx) {
    this.mmToPhoto = row.mmToPx();
    this.photoToMm = mmToPhoto.inverse();
    this.leads = row.leads();
    this.sign = orientation(mmToPhoto, (uFrom + uTo) / 2) < 0 ? -1 : 1;
    this.fromMm = sign > 0 ? uFrom : uTo;
    this.widthPx = widthPx;
    this.pxPerMm = widthPx / (uTo - uFrom);
    this.topMm = extremeMm(false) - BEYOND * pitchMm;
    this.heightPx = (int) Math.round((extremeMm(true) + BEYOND * pitchMm - topMm) * pxPerMm);
  }

  /** One joint and two neighbours on each side. */
  static Window joint(RowOutcome.Found row, double pitchMm, int pin) {
    double u = uMm(row, pin);
    double half = JOINT_PITCHES * pitchMm;
    return new Window(row, pitchMm, u - half, u + half, JOINT_PX);
  }

  /** All of a row. */
  public static Window row(RowOutcome.Found row, double pitchMm) {
    double from = uMm(row, 1) - SIDES * pitchMm;
    double to = uMm(row, row.leads().size()) + SIDES * pitchMm;
    int width = (int) Math.min(MOST_PX, Math.round((to - from) / pitchMm * ROW_PX_PER_PITCH));
    return new Window(row, pitchMm, from, to, width);
  }

  private static double uMm(RowOutcome.Found row, int pin) {
    Lead lead = row.leads().get(pin - 1);
    Homography toMm = row.mmToPx().inverse();
    double toe = toMm.map(lead.landToePx().x(), lead.landToePx().y()).x();
    return (toe + toMm.map(lead.landHeelPx().x(), lead.landHeelPx().y()).x()) / 2;
  }

  /** Above 0 if the row frame appears in the photo turned, below if mirrored. */
  private static double orientation(Homography map, double uMm) {
    PointPx at = map.map(uMm, 0);
    PointPx along = map.map(uMm + 0.1, 0);
    PointPx out = map.map(uMm, 0.1);
    return (along.x() - at.x()) * (out.y() - at.y()) - (along.y() - at.y()) * (out.x() - at.x());
  }

  private double extremeMm(boolean most) {
    Comparator<Double> order = Comparator.naturalOrder();
    return leads.stream()
        .flatMap(l -> List.of(l.landToePx(), l.landHeelPx()).stream())
        .map(p -> photoToMm.map(p.x(), p.y()).y())
        .max(most ? order : order.reversed())
        .orElseThrow();
  }

  int widthPx() {
    return widthPx;
  }

  int heightPx() {
    return heightPx;
  }

  double px(double mm) {
    return mm * pxPerMm;
  }

  /** Place in the picture of a pin's middle, from the left. */
  double xPx(int pin) {
    Lead lead = leads.get(pin - 1);
    return (at(lead.landToePx()).x() + at(lead.landHeelPx()).x()) / 2;
  }

  /** Place in the picture of a place in the photo. */
  PointPx at(PointPx photo) {
    PointPx mm = photoToMm.map(photo.x(), photo.y());
    return new PointPx(sign * (mm.x() - fromMm) * pxPerMm, (mm.y() - topMm) * pxPerMm);
  }

  /** The picture. */
  public byte[] jpeg(Frame photo) {
    double step = 1 / pxPerMm;
    Homography pictureToMm = new Homography(sign * step, 0, fromMm, 0, step, topMm, 0, 0, 1);
    try (Canvas canvas = new Canvas(widthPx, heightPx, OUTSIDE)) {
      canvas.pasteStraightened(photo, mmToPhoto.after(pictureToMm), 0, 0, widthPx, heightPx);
      return canvas.jpeg(QUALITY);
    }
  }
}
