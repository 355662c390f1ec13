package leadlight.leg.read;

import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.numeric.Bilinear;
import leadlight.vision.Frame;

/**
 * A land as the leg reader sees it, unrolled about its middle: a column a direction, the first rows
 * from the middle to the hole's edge, the next to the land's edge, the last beyond. So hole and
 * land of every shape lie at the same rows, and a sector is a stretch of columns. Its sizes are
 * those that the network of {@code models/legs} was learned with; they have no other source.
 */
public final class LegPicture {

  /** Red, green, blue, and how many photo pixels lie between a row and the next. */
  public static final int PLANES = 4;

  private static final int TO_HOLE = 36;
  private static final int TO_LAND = 22;
  private static final int BEYOND = 14;

  /** Rows. */
  public static final int HEIGHT = TO_HOLE + TO_LAND + BEYOND;

  private static final int AROUND = 144;

  /** Columns that repeat those of the other end, on either side. */
  private static final int OVERLAP = 16;

  /** Columns. */
  public static final int WIDTH = AROUND + 2 * OVERLAP;

  /** How far beyond the land's edge the last row lies, share of the way to that edge. */
  private static final double FARTHEST = 0.6;

  /** Pixels of the land's longer side in the piece that is sampled. */
  private static final double LENGTH_PX = 192;

  /** Levels for each photo pixel between two rows. */
  private static final double LEVELS_PER_PX = 64;

  private static final int MOST = 255;

  private final LegRequest.Leg leg;
  private final ColourPatch patch;
  private final double pxPerMm;
  private final double perPhotoPx;
  private final double middleX;
  private final double middleY;

  private LegPicture(Frame frame, FoundLeg found) {
    this.leg = found.leg();
    this.pxPerMm = LENGTH_PX / Math.max(leg.landWidthMm(), leg.landHeightMm());
    int width = size(leg.landWidthMm());
    int height = size(leg.landHeightMm());
    this.middleX = (width - 1) / 2.0;
    this.middleY = (height - 1) / 2.0;
    this.perPhotoPx = pxPerMm / found.place().pxPerMm();
    double factor = Math.min(1, perPhotoPx);
    try (Frame small = factor < 0.7 ? frame.shrunk(factor) : null) {
      LandPlace place = small == null ? found.place() : found.place().scaled(factor);
      this.patch = (small == null ? frame : small).straightened(toPhoto(place), width, height);
    }
  }

  private int size(double mm) {
    return (int) Math.ceil(mm * (1 + FARTHEST) * pxPerMm) + 2;
  }

  /**
   * The picture of one leg.
   *
   * @return {@link #PLANES} planes of {@link #HEIGHT} rows of {@link #WIDTH} levels, 0 to 255
   */
  public static byte[] of(Frame frame, FoundLeg leg) {
    return new LegPicture(frame, leg).planes();
  }

  /**
   * Which share of the land, hole included, is burnt out.
   *
   * @param picture as {@link #of} gives it
   * @param from level from which a channel is full
   */
  static double burntOut(byte[] picture, double from) {
    int rows = TO_HOLE + TO_LAND;
    int burnt = 0;
    for (int row = 0; row < rows; row++) {
      for (int column = OVERLAP; column < OVERLAP + AROUND; column++) {
        boolean full = true;
        for (int channel = 0; channel < PLANES - 1; channel++) {
          full &= (picture[(channel * HEIGHT + row) * WIDTH + column] & MOST) >= from;
        }
        burnt += full ? 1 : 0;
      }
    }
    return (double) burnt / (rows * AROUND);
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

  private byte[] planes() {
    byte[] out = new byte[PLANES * HEIGHT * WIDTH];
    for (int column = 0; column < WIDTH; column++) {
      double angle = 2 * Math.PI * (column - OVERLAP + 0.5) / AROUND;
      double dx = Math.cos(angle);
      double dy = Math.sin(angle);
      double hole = leg.hole().reachMm(dx, dy);
      double land = leg.land().reachMm(dx, dy);
      for (int row = 0; row < HEIGHT; row++) {
        double reachMm = reachMm(row, hole, land);
        double stepMm = reachMm(row, hole, land, 1) - reachMm(row, hole, land, 0);
        double x = middleX + dx * reachMm * pxPerMm;
        double y = middleY + dy * reachMm * pxPerMm;
        put(out, 0, row, column, at(patch.red(), x, y));
        put(out, 1, row, column, at(patch.green(), x, y));
        put(out, 2, row, column, at(patch.blue(), x, y));
        put(out, 3, row, column, LEVELS_PER_PX * stepMm * pxPerMm / perPhotoPx);
      }
    }
    return out;
  }

  private static double reachMm(int row, double hole, double land) {
    return reachMm(row, hole, land, 0.5);
  }

  /**
   * Distance from the middle.
   *
   * @param within the row, 0 to 1
   */
  private static double reachMm(int row, double hole, double land, double within) {
    if (row < TO_HOLE) {
      return hole * (row + within) / TO_HOLE;
    }
    if (row < TO_HOLE + TO_LAND) {
      return hole + (land - hole) * (row - TO_HOLE + within) / TO_LAND;
    }
    return land * (1 + FARTHEST * (row - TO_HOLE - TO_LAND + within) / BEYOND);
  }

  private static double at(Plane plane, double x, double y) {
    int left = (int) Math.floor(x);
    int above = (int) Math.floor(y);
    return Bilinear.of(
        plane.at(left, above),
        plane.at(left + 1, above),
        plane.at(left, above + 1),
        plane.at(left + 1, above + 1),
        x - left,
        y - above);
  }

  private static void put(byte[] out, int plane, int row, int column, double level) {
    out[(plane * HEIGHT + row) * WIDTH + column] =
        (byte) Math.max(0, Math.min(MOST, Math.rint(level)));
  }
}
