package leadlight.motion;

import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.register.RowGrid;

/**
 * A lead's foot on the grid, in grid pixels.
 *
 * @param pin its pin
 * @param toeX column of the toe's middle
 * @param toeY row of the toe
 * @param heelX column of the heel's middle
 * @param heelY row of the heel, less than {@code toeY}
 * @param landY row of the land's open end
 * @param halfWidth half the lead's width
 */
record Foot(
    int pin, double toeX, double toeY, double heelX, double heelY, double landY, double halfWidth) {

  static Foot of(Lead lead, Homography photoToMm, RowGrid grid, double widthMm) {
    PointPx toe = photoToMm.map(lead.toePx().x(), lead.toePx().y());
    PointPx heel = photoToMm.map(lead.heelPx().x(), lead.heelPx().y());
    PointPx land = photoToMm.map(lead.landToePx().x(), lead.landToePx().y());
    return new Foot(
        lead.pin(),
        grid.column(toe.x()),
        grid.row(toe.y()),
        grid.column(heel.x()),
        grid.row(heel.y()),
        grid.row(land.y()),
        widthMm * grid.pxPerMm() / 2);
  }

  double length() {
    return toeY - heelY;
  }

  /** Middle of the lead in row y. */
  double middle(double y) {
    return toeX + (heelX - toeX) * (toeY - y) / length();
  }
}
