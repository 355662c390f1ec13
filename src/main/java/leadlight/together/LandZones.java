package leadlight.together;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.register.RowGrid;

/**
 * Where solder would show at a joint, on the grid of two overlaid photos: ahead of the toe and on
 * either side of the foot; and where it cannot.
 */
record LandZones(Box ahead, Box left, Box right, Box joint, Box top) {

  /** Pixels from one corner to the other, both taken in. */
  record Box(double x0, double y0, double x1, double y1) {

    /** The numbers of its pixels in a picture. */
    int[] pixels(int width, int height) {
      int fromX = (int) Math.max(0, Math.ceil(x0));
      int toX = (int) Math.min(width - 1.0, Math.floor(x1));
      int fromY = (int) Math.max(0, Math.ceil(y0));
      int toY = (int) Math.min(height - 1.0, Math.floor(y1));
      int across = Math.max(0, toX - fromX + 1);
      int[] pixels = new int[across * Math.max(0, toY - fromY + 1)];
      for (int k = 0; k < pixels.length; k++) {
        pixels[k] = (fromY + k / across) * width + fromX + k % across;
      }
      return pixels;
    }
  }

  /**
   * The zones of a row.
   *
   * @param shares how far they reach, pitches
   */
  static List<LandZones> of(
      List<Lead> leads,
      RowGrid grid,
      double pitchMm,
      Homography photoToMm,
      ChangeTuning.Zones shares) {
    double pitchPx = pitchMm * grid.pxPerMm();
    return leads.stream().map(lead -> of(lead, grid, pitchPx, photoToMm, shares)).toList();
  }

  private static LandZones of(
      Lead lead, RowGrid grid, double pitchPx, Homography photoToMm, ChangeTuning.Zones shares) {
    PointPx toe = photoToMm.map(lead.toePx().x(), lead.toePx().y());
    PointPx heel = photoToMm.map(lead.heelPx().x(), lead.heelPx().y());
    PointPx land = photoToMm.map(lead.landToePx().x(), lead.landToePx().y());
    double x = grid.column(toe.x());
    double middle = (x + grid.column(heel.x())) / 2;
    double toeY = grid.row(toe.y());
    double heelY = grid.row(heel.y());
    double landY = grid.row(land.y());
    double w = shares.halfLand().value() * pitchPx;
    double b = shares.beside().value() * pitchPx;
    double joint = shares.halfJoint().value() * pitchPx;
    double top = shares.halfTop().value() * pitchPx;
    double behindToe = shares.behindToe().value() * pitchPx;
    double behindHeel = shares.behindHeel().value() * pitchPx;
    return new LandZones(
        new Box(x - w, toeY - behindToe, x + w, landY),
        new Box(x - w, heelY, x - b, toeY),
        new Box(x + b, heelY, x + w, toeY),
        new Box(x - joint, heelY - behindHeel, x + joint, landY + behindToe),
        new Box(middle - top, heelY, middle + top, toeY - top));
  }
}
