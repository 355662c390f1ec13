package leadlight.row;

import java.util.Arrays;
import leadlight.model.Plane;
import leadlight.vision.Matching;

/**
 * The row's own picture of a lead: the strip folded by the lattice, the median of all leads pixel
 * by pixel; and how well each place of the row matches it.
 */
record LeadPicture(Plane picture, double vFrom, double vTo, double contrast) {

  static LeadPicture of(Strip strip, Lattice lattice, double vFrom, double vTo) {
    Plane[] cells = new Plane[lattice.count()];
    for (int k = 0; k < cells.length; k++) {
      double u = lattice.u()[k];
      cells[k] = strip.cut(strip.ripple(), u - 0.5, u + 0.5, vFrom, vTo);
    }
    Plane median = median(cells);
    return new LeadPicture(median, vFrom, vTo, spread(median));
  }

  static Plane median(Plane[] cells) {
    int w = cells[0].width();
    int h = cells[0].height();
    float[] data = new float[w * h];
    float[] column = new float[cells.length];
    for (int i = 0; i < data.length; i++) {
      for (int k = 0; k < cells.length; k++) {
        column[k] = cells[k].data()[i];
      }
      Arrays.sort(column);
      data[i] = (column[(cells.length - 1) / 2] + column[cells.length / 2]) / 2;
    }
    return new Plane(w, h, data);
  }

  static double spread(Plane plane) {
    double sum = 0;
    double square = 0;
    for (float v : plane.data()) {
      sum += v;
      square += v * v;
    }
    int n = plane.data().length;
    return Math.sqrt(Math.max(0, square / n - sum / n * (sum / n)));
  }

  /**
   * How much the place looks like a lead of this row: best correlation within a little play,
   * lessened where the place has less contrast than the typical lead. 0 outside the photo.
   */
  double likeness(Strip strip, double u) {
    double play = 0.22;
    double middle = (vFrom + vTo) / 2;
    if (!strip.shows(u, middle)) {
      return 0;
    }
    Plane place =
        strip.cut(strip.ripple(), u - 0.5 - play, u + 0.5 + play, vFrom - play, vTo + play);
    Plane scores = Matching.correlation(place, picture);
    double best = -1;
    for (float s : scores.data()) {
      best = Math.max(best, s);
    }
    double own = spread(strip.cut(strip.ripple(), u - 0.5, u + 0.5, vFrom, vTo));
    return best * Math.min(1, own / Math.max(1, 0.6 * contrast));
  }
}
