package leadlight.together;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.register.RowGrid;

/**
 * Where solder would show at a joint, on the grid of two overlaid photos: ahead of the toe and on
 * either side of the foot; and where it cannot. Shares of the pitch: a common land is 0.55 to 0.6
 * of the pitch wide, a lead 0.4 (figures of the trade, from memory).
 */
record LandZones(Box ahead, Box left, Box right, Box joint, Box top) {

  private static final double HALF_LAND = 0.3;
  private static final double BESIDE = 0.16;
  private static final double BEHIND_TOE = 0.1;

  /** Solder, its fillet and its shadow reach no further than this. */
  private static final double HALF_JOINT = 0.42;

  private static final double BEHIND_HEEL = 0.5;
  private static final double HALF_TOP = 0.12;

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

  static List<LandZones> of(List<Lead> leads, RowGrid grid, double pitchMm, Homography photoToMm) {
    return leads.stream().map(lead -> of(lead, grid, pitchMm, photoToMm)).toList();
  }

  private static LandZones of(Lead lead, RowGrid grid, double pitchMm, Homography photoToMm) {
    PointPx toe = photoToMm.map(lead.toePx().x(), lead.toePx().y());
    PointPx heel = photoToMm.map(lead.heelPx().x(), lead.heelPx().y());
    PointPx land = photoToMm.map(lead.landToePx().x(), lead.landToePx().y());
    double pitch = pitchMm * grid.pxPerMm();
    double x = grid.column(toe.x());
    double middle = (x + grid.column(heel.x())) / 2;
    double toeY = grid.row(toe.y());
    double heelY = grid.row(heel.y());
    double landY = grid.row(land.y());
    double w = HALF_LAND * pitch;
    double b = BESIDE * pitch;
    return new LandZones(
        new Box(x - w, toeY - BEHIND_TOE * pitch, x + w, landY),
        new Box(x - w, heelY, x - b, toeY),
        new Box(x + b, heelY, x + w, toeY),
        new Box(
            x - HALF_JOINT * pitch,
            heelY - BEHIND_HEEL * pitch,
            x + HALF_JOINT * pitch,
            landY + BEHIND_TOE * pitch),
        new Box(
            middle - HALF_TOP * pitch, heelY, middle + HALF_TOP * pitch, toeY - HALF_TOP * pitch));
  }
}
