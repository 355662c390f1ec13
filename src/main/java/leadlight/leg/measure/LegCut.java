package leadlight.leg.measure;

import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.vision.Frame;

/** The picture of one land, straightened: its own axes, a fixed number of pixels long. */
public final class LegCut {

  /** Pixels of the land's longer side. */
  static final double LENGTH_PX = 96;

  /** How far the cut reaches beyond the land, against half of it. */
  private static final double REACH = 1.45;

  private final ColourPatch patch;
  private final double pxPerMm;
  private final double perPhotoPx;
  private final double middleX;
  private final double middleY;

  public LegCut(Frame frame, FoundLeg leg) {
    double widthMm = leg.leg().landWidthMm();
    double heightMm = leg.leg().landHeightMm();
    this.pxPerMm = LENGTH_PX / Math.max(widthMm, heightMm);
    int width = (int) Math.ceil(widthMm * REACH * pxPerMm);
    int height = (int) Math.ceil(heightMm * REACH * pxPerMm);
    this.middleX = (width - 1) / 2.0;
    this.middleY = (height - 1) / 2.0;
    this.perPhotoPx = pxPerMm / leg.place().pxPerMm();
    double factor = Math.min(1, perPhotoPx);
    try (Frame small = factor < 0.7 ? frame.shrunk(factor) : null) {
      LandPlace place = small == null ? leg.place() : leg.place().scaled(factor);
      this.patch = (small == null ? frame : small).straightened(toPhoto(place), width, height);
    }
  }

  private Homography toPhoto(LandPlace place) {
    PointPx zero = place.at(-middleX / pxPerMm, -middleY / pxPerMm);
    PointPx right = place.at((1 - middleX) / pxPerMm, -middleY / pxPerMm);
    PointPx down = place.at(-middleX / pxPerMm, (1 - middleY) / pxPerMm);
    return new Homography(
        right.x() - zero.x(),
        down.x() - zero.x(),
        zero.x(),
        right.y() - zero.y(),
        down.y() - zero.y(),
        zero.y(),
        0,
        0,
        1);
  }

  /** Red, green and blue, 0 to 255, averaged over three by three pixels, at a place in the land. */
  double[] at(double xMm, double yMm) {
    int column = within(Math.rint(middleX + xMm * pxPerMm), patch.width());
    int row = within(Math.rint(middleY + yMm * pxPerMm), patch.height());
    double[] sum = new double[3];
    for (int y = row - 1; y <= row + 1; y++) {
      for (int x = column - 1; x <= column + 1; x++) {
        sum[0] += patch.red().at(x, y) / 9;
        sum[1] += patch.green().at(x, y) / 9;
        sum[2] += patch.blue().at(x, y) / 9;
      }
    }
    return sum;
  }

  /** The lightest channel, averaged over three by three pixels, pixels from the cut's middle. */
  double lightest(double x, double y) {
    double[] rgb = at(x / pxPerMm, y / pxPerMm);
    return Math.max(rgb[0], Math.max(rgb[1], rgb[2]));
  }

  int width() {
    return patch.width();
  }

  int height() {
    return patch.height();
  }

  double pxPerMm() {
    return pxPerMm;
  }

  /** Pixels of the cut for each of the photo. */
  double perPhotoPx() {
    return perPhotoPx;
  }

  private static int within(double at, int size) {
    return (int) Math.max(1, Math.min(size - 2, at));
  }
}
