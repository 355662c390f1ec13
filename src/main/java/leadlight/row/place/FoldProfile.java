package leadlight.row.place;

import java.util.Arrays;
import leadlight.model.picture.Plane;
import leadlight.numeric.Parabola;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Strip;

/**
 * The middle of the folded strip row by row: for each v the colours across the lead, smoothed along
 * v; how strongly they change from row to row.
 */
final class FoldProfile {

  /** A single lead's change counts no more than this, grey levels. */
  private static final double MOST_STEP = 60;

  private final double[][] rows;
  private final double[] change;
  private final double vFrom;
  private final int perPitch;

  /**
   * @param halfWidth how far from the lead's middle the columns reach, pitches
   * @param sigma smoothing along v, pitches
   */
  FoldProfile(Strip strip, Lattice lattice, double halfWidth, double sigma) {
    perPitch = strip.perPitch();
    vFrom = strip.vFrom();
    rows = smoothed(folded(strip, lattice, halfWidth), sigma * perPitch);
    change = new double[rows.length];
    for (int y = 1; y + 1 < rows.length; y++) {
      for (int i = 0; i < rows[y].length; i++) {
        double step = rows[y + 1][i] - rows[y - 1][i];
        change[y] += Math.abs(step) / rows[y].length;
      }
    }
    addSingleLeads(strip, lattice, halfWidth, sigma * perPitch);
  }

  /** Changes that many leads show but the median lead does not, as where half of them are bad. */
  private void addSingleLeads(Strip strip, Lattice lattice, double halfWidth, double sigma) {
    double[] mean = new double[rows.length];
    double v1 = strip.v(strip.height() - 1);
    for (double u : lattice.u()) {
      Plane cell = strip.cut(strip.grey(), u - halfWidth, u + halfWidth, strip.vFrom(), v1);
      double[][] own = new double[rows.length][1];
      for (int y = 0; y < rows.length; y++) {
        for (int x = 0; x < cell.width(); x++) {
          own[y][0] += cell.at(x, y) / cell.width();
        }
      }
      own = smoothed(own, sigma);
      for (int y = 1; y + 1 < rows.length; y++) {
        double step = own[y + 1][0] - own[y - 1][0];
        step = Math.max(-MOST_STEP, Math.min(MOST_STEP, step)) / lattice.count();
        mean[y] += Math.abs(step);
      }
    }
    double[] sorted = mean.clone();
    Arrays.sort(sorted);
    double noise = sorted[sorted.length / 5];
    for (int y = 0; y < rows.length; y++) {
      change[y] += Math.max(0, mean[y] - noise);
    }
  }

  private static double[][] folded(Strip strip, Lattice lattice, double halfWidth) {
    Plane[] planes = {strip.colour().red(), strip.colour().green(), strip.colour().blue()};
    double v1 = strip.v(strip.height() - 1);
    double[][] rows = new double[strip.height()][];
    for (int c = 0; c < 3; c++) {
      Plane[] cells = new Plane[lattice.count()];
      for (int k = 0; k < cells.length; k++) {
        double u = lattice.u()[k];
        cells[k] = strip.cut(planes[c], u - halfWidth, u + halfWidth, strip.vFrom(), v1);
      }
      Plane fold = LeadPicture.median(cells);
      for (int y = 0; y < rows.length; y++) {
        rows[y] = rows[y] == null ? new double[3 * fold.width()] : rows[y];
        for (int x = 0; x < fold.width(); x++) {
          rows[y][c * fold.width() + x] = fold.at(x, y);
        }
      }
    }
    return rows;
  }

  static double[][] smoothed(double[][] rows, double sigma) {
    int reach = (int) Math.ceil(3 * sigma);
    double[][] out = new double[rows.length][rows[0].length];
    for (int y = 0; y < rows.length; y++) {
      double total = 0;
      for (int k = -reach; k <= reach; k++) {
        double w = Math.exp(-0.5 * k * k / (sigma * sigma));
        double[] row = rows[Math.max(0, Math.min(rows.length - 1, y + k))];
        total += w;
        for (int i = 0; i < row.length; i++) {
          out[y][i] += w * row[i];
        }
      }
      for (int i = 0; i < out[y].length; i++) {
        out[y][i] /= total;
      }
    }
    return out;
  }

  int rows() {
    return rows.length;
  }

  /** Row that shows v, clamped to the strip. */
  int y(double v) {
    return Math.max(1, Math.min(rows.length - 2, (int) Math.round((v - vFrom) * perPitch)));
  }

  double v(double y) {
    return vFrom + y / perPitch;
  }

  double change(int y) {
    return change[y];
  }

  boolean isPeak(int y) {
    return change[y] >= change[y - 1] && change[y] > change[y + 1];
  }

  /** Place of the peak at row y, between the rows. */
  double peak(int y) {
    return v(Parabola.peak(change, y));
  }
}
