package leadlight.row.place;

import leadlight.model.picture.Plane;
import leadlight.numeric.Quantiles;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.Strip;

/** The row's feet and toes cut out of its strip, as profiles. */
final class FootCuts {

  private static final double TOE_HALF_WIDTH = 0.14;

  private final Strip strip;
  private final Lattice lattice;
  private final int middle;

  FootCuts(Strip strip, Lattice lattice) {
    this.strip = strip;
    this.lattice = lattice;
    this.middle = (int) Math.round(1.1 * strip.perPitch());
  }

  /** The column of a cut across that lies on the lead's place in the lattice. */
  int middle() {
    return middle;
  }

  /** All leads cut {@linkplain #across(double, double, double) across}. */
  double[][][] across(double vFrom, double vTo) {
    double[][][] all = new double[lattice.count()][][];
    for (int k = 0; k < all.length; k++) {
      all[k] = across(lattice.u()[k], vFrom, vTo);
    }
    return all;
  }

  /** Median down a stretch of a lead, for each column around u and each channel. */
  double[][] across(double u, double v0, double v1) {
    Plane[] planes = {strip.colour().red(), strip.colour().green(), strip.colour().blue()};
    double[][] out = new double[2 * middle + 1][3];
    int rows = (int) Math.round((v1 - v0) * strip.perPitch());
    double[] column = new double[rows + 1];
    for (int x = 0; x < out.length; x++) {
      double at = strip.x(u) + x - middle;
      for (int c = 0; c < 3; c++) {
        for (int y = 0; y <= rows; y++) {
          column[y] = value(planes[c], at, (int) Math.round(strip.y(v0)) + y);
        }
        out[x][c] = Quantiles.median(column);
      }
    }
    return out;
  }

  /** Mean brightness across the lead's middle for each row around the toe. */
  double[] toe(double u, double toe) {
    Plane cut =
        strip.cut(strip.grey(), u - TOE_HALF_WIDTH, u + TOE_HALF_WIDTH, toe - 0.4, toe + 0.4);
    double[] out = new double[cut.height()];
    for (int y = 0; y < out.length; y++) {
      for (int x = 0; x < cut.width(); x++) {
        out[y] += cut.at(x, y) / cut.width();
      }
    }
    return out;
  }

  /** The row's median toe profile, each lead's middle so far from its place in the lattice. */
  double[] typicalToe(double axis, double toe) {
    double[][] all = new double[lattice.count()][];
    for (int k = 0; k < all.length; k++) {
      all[k] = toe(lattice.u()[k] + axis, toe);
    }
    double[] typical = new double[all[0].length];
    double[] column = new double[all.length];
    for (int i = 0; i < typical.length; i++) {
      for (int k = 0; k < all.length; k++) {
        column[k] = all[k][i];
      }
      typical[i] = Quantiles.median(column);
    }
    return typical;
  }

  private static double value(Plane p, double x, int y) {
    double c = Math.max(0, Math.min(p.width() - 1.001, x));
    int i = (int) c;
    int j = Math.max(0, Math.min(p.height() - 1, y));
    return p.at(i, j) * (1 - c + i) + p.at(i + 1, j) * (c - i);
  }

  /** The median of all leads, column by column and channel by channel. */
  static double[][] median(double[][][] all) {
    double[][] out = new double[all[0].length][all[0][0].length];
    double[] column = new double[all.length];
    for (int x = 0; x < out.length; x++) {
      for (int c = 0; c < out[x].length; c++) {
        for (int k = 0; k < all.length; k++) {
          column[k] = all[k][x][c];
        }
        out[x][c] = Quantiles.median(column);
      }
    }
    return out;
  }
}
