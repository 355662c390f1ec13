package leadlight.row.place;

import leadlight.model.picture.Plane;
import leadlight.numeric.Quantiles;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Strip;

/**
 * Colours down a strip, row by row: of the median lead at its middle, at the flanks of its land and
 * in the gaps; of the board beside the row; and each lead's own brightness.
 *
 * @param middle median lead within an eighth of a pitch of its middle
 * @param flank median lead where land shows beside the lead and no trace does
 * @param gap median gap
 * @param beside median of the columns beyond both ends of the row
 * @param middles brightness of each row at each lead's middle
 * @param flanks brightness of each row at each lead's flanks
 * @param roughness root mean square deviation along the row within a pitch
 */
record LengthProfiles(
    double[][] middle,
    double[][] flank,
    double[][] gap,
    double[][] beside,
    double[][] middles,
    double[][] flanks,
    double[] roughness) {

  private static final double[] MIDDLE = {0, 0.125};
  private static final double[] FLANK = {0.17, 0.28};
  private static final double[] GAP = {0.42, 0.5};
  private static final double[] BESIDE = {0.8, 1.7};

  static LengthProfiles of(Strip strip, Lattice lattice) {
    Plane[] channels = {strip.colour().red(), strip.colour().green(), strip.colour().blue()};
    int h = strip.height();
    double[][][] out = new double[4][h][3];
    for (int c = 0; c < 3; c++) {
      Plane fold = LeadPicture.median(cells(strip, channels[c], lattice));
      double[] beside = beside(strip, channels[c], lattice);
      for (int y = 0; y < h; y++) {
        out[0][y][c] = mean(fold, y, strip.perPitch(), MIDDLE);
        out[1][y][c] = mean(fold, y, strip.perPitch(), FLANK);
        out[2][y][c] = mean(fold, y, strip.perPitch(), GAP);
        out[3][y][c] = beside[y];
      }
    }
    Plane[] grey = cells(strip, strip.grey(), lattice);
    double[][] middles = new double[h][grey.length];
    double[][] flanks = new double[h][grey.length];
    for (int y = 0; y < h; y++) {
      for (int k = 0; k < grey.length; k++) {
        middles[y][k] = mean(grey[k], y, strip.perPitch(), MIDDLE);
        flanks[y][k] = mean(grey[k], y, strip.perPitch(), FLANK);
      }
    }
    return new LengthProfiles(out[0], out[1], out[2], out[3], middles, flanks, roughness(grey, h));
  }

  private static Plane[] cells(Strip strip, Plane plane, Lattice lattice) {
    Plane[] cells = new Plane[lattice.count()];
    for (int k = 0; k < cells.length; k++) {
      double u = lattice.u()[k];
      cells[k] = strip.cut(plane, u - 0.5, u + 0.5, strip.vFrom(), strip.v(strip.height() - 1));
    }
    return cells;
  }

  /** Mean of the columns of row y whose distance from the middle lies in a range. */
  private static double mean(Plane cell, int y, int perPitch, double[] range) {
    double sum = 0;
    int n = 0;
    for (int x = 0; x < cell.width(); x++) {
      double u = Math.abs(x / (double) perPitch - 0.5);
      if (u >= range[0] && u <= range[1]) {
        sum += cell.at(x, y);
        n++;
      }
    }
    return sum / n;
  }

  private static double[] beside(Strip strip, Plane plane, Lattice lattice) {
    double[] out = new double[strip.height()];
    int reach = (int) Math.round((BESIDE[1] - BESIDE[0]) * strip.perPitch());
    int left = (int) Math.round(strip.x(-BESIDE[1]));
    int right = (int) Math.round(strip.x(lattice.span() + BESIDE[0]));
    double[] row = new double[2 * reach];
    for (int y = 0; y < out.length; y++) {
      for (int i = 0; i < reach; i++) {
        row[i] = plane.at(left + i, y);
        row[reach + i] = plane.at(right + i, y);
      }
      out[y] = Quantiles.median(row);
    }
    return out;
  }

  private static double[] roughness(Plane[] grey, int height) {
    double[] out = new double[height];
    int w = grey[0].width();
    for (int y = 0; y < height; y++) {
      double sum = 0;
      for (Plane cell : grey) {
        double mean = 0;
        double square = 0;
        for (int x = 0; x < w; x++) {
          mean += cell.at(x, y) / w;
          square += cell.at(x, y) * cell.at(x, y) / w;
        }
        sum += Math.max(0, square - mean * mean) / grey.length;
      }
      out[y] = Math.sqrt(sum);
    }
    return out;
  }
}
