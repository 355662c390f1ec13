package leadlight.row;

import leadlight.model.Plane;

/**
 * Where toes, heels and land ends lie along v, from the strip folded by its lattice; the body is on
 * the strip's upper side.
 *
 * @param landToe open end of the lands
 * @param toe open end of the leads
 * @param heel where the leads leave the body or turn up
 * @param landHeel end of the lands at the body
 */
record ToeLocator(double landToe, double toe, double heel, double landHeel) {

  static ToeLocator of(Strip strip, Lattice lattice, Zone zone) {
    double landToe = landToe(strip, lattice, zone);
    double landHeel = zone.from() + 0.2;
    double toe = Math.max(landToe - 0.65, landHeel + 0.3);
    return new ToeLocator(landToe, toe, landHeel + 0.3, landHeel);
  }

  private static double landToe(Strip strip, Lattice lattice, Zone zone) {
    int s = strip.perPitch();
    Plane[] folds = new Plane[3];
    Plane[] planes = {strip.colour().red(), strip.colour().green(), strip.colour().blue()};
    double v0 = zone.to() - 1.0;
    double v1 = zone.to() + 1.0;
    for (int c = 0; c < 3; c++) {
      Plane[] cells = new Plane[lattice.count()];
      for (int k = 0; k < cells.length; k++) {
        double u = lattice.u()[k];
        cells[k] = strip.cut(planes[c], u - 0.2, u + 0.2, v0, v1);
      }
      folds[c] = LeadPicture.median(cells);
    }
    int h = folds[0].height();
    double[] far = new double[3];
    for (int c = 0; c < 3; c++) {
      far[c] = rows(folds[c], h - s / 2, h);
    }
    double[] d = new double[h];
    double most = 0;
    for (int y = 0; y < h; y++) {
      for (int c = 0; c < 3; c++) {
        d[y] += Math.abs(rows(folds[c], y, y + 1) - far[c]);
      }
      most = Math.max(most, d[y]);
    }
    int y = h - 1;
    while (y > 0 && d[y] < 0.3 * most) {
      y--;
    }
    double peak = 0;
    for (int q = y; q > Math.max(0, y - s / 3); q--) {
      peak = Math.max(peak, d[q]);
    }
    while (y < h - 1 && d[y] > 0.5 * peak) {
      y++;
    }
    while (y > 0 && d[y] < 0.5 * peak) {
      y--;
    }
    double sub = y + 1 < h ? (d[y] - 0.5 * peak) / Math.max(1e-6, d[y] - d[y + 1]) : 0;
    return v0 + (y + Math.max(0, Math.min(1, sub))) / s;
  }

  private static double rows(Plane fold, int y0, int y1) {
    double sum = 0;
    for (int y = y0; y < y1; y++) {
      for (int x = 0; x < fold.width(); x++) {
        sum += fold.at(x, y);
      }
    }
    return sum / fold.width() / (y1 - y0);
  }
}
