package leadlight.row.strip;

import leadlight.model.picture.Plane;
import leadlight.numeric.Quantiles;

/**
 * The strip correlated with a wave of one pitch, cell by cell and band by band. Brightness is taken
 * less its running mean over a pitch, so slow shading does not count.
 */
public final class Waves {

  public static final double BAND_V = 0.25;

  public final int bands;
  final int cells;
  private final double[][] re;
  private final double[][] im;
  private final double[][] energy;
  private final double vFrom;
  private final double floor;

  /** One cell around each lattice place. */
  public Waves(Strip strip, Lattice lattice) {
    int s = strip.perPitch();
    cells = lattice.count();
    int bandPx = Math.max(1, (int) Math.round(BAND_V * s));
    bands = strip.height() / bandPx;
    vFrom = strip.vFrom() + (bandPx - 1) / 2.0 / s;
    re = new double[bands][cells];
    im = new double[bands][cells];
    energy = new double[bands][cells];
    double all = 0;
    for (int b = 0; b < bands; b++) {
      double[] band = mean(strip.ripple(), b * bandPx, bandPx);
      for (double value : band) {
        all += value * value / band.length / bands;
      }
      for (int k = 0; k < cells; k++) {
        if (strip.shows(lattice.u()[k], v(b))) {
          cell(strip, band, b, k, lattice.u()[k]);
        }
      }
    }
    floor = Math.max(1.5, 0.3 * Math.sqrt(all));
  }

  private void cell(Strip strip, double[] band, int b, int k, double u) {
    int s = strip.perPitch();
    int from = (int) Math.round(strip.x(u - 0.5));
    for (int x = from; x < from + s; x++) {
      if (x < 0 || x >= band.length) {
        continue;
      }
      double phase = 2 * Math.PI * (strip.u(x) - u);
      re[b][k] += band[x] * Math.cos(phase) * 2 / s;
      im[b][k] += band[x] * Math.sin(phase) * 2 / s;
      energy[b][k] += band[x] * band[x] * 2 / s;
    }
  }

  public double v(int band) {
    return vFrom + band * BAND_V;
  }

  public double re(int b, int k) {
    return re[b][k] / norm(b, k);
  }

  public double im(int b, int k) {
    return im[b][k] / norm(b, k);
  }

  /** Squared amplitude of all that varies within the cell. */
  public double energy(int b, int k) {
    return energy[b][k];
  }

  /** Median amplitude of the cells of a band. */
  double amplitude(int b) {
    double[] amplitudes = new double[cells];
    for (int k = 0; k < cells; k++) {
      amplitudes[k] = Math.sqrt(energy[b][k]);
    }
    return Quantiles.median(amplitudes);
  }

  private double norm(int b, int k) {
    return Math.sqrt(energy[b][k] + floor * floor);
  }

  /** Agreement in phase of the cells of a band: length and direction of their mean. */
  public double[] lock(int b) {
    double r = 0;
    double i = 0;
    for (int k = 0; k < cells; k++) {
      r += re(b, k) / cells;
      i += im(b, k) / cells;
    }
    return new double[] {Math.hypot(r, i), Math.atan2(i, r)};
  }

  private static double[] mean(Plane grey, int y0, int rows) {
    double[] mean = new double[grey.width()];
    for (int y = y0; y < y0 + rows; y++) {
      for (int x = 0; x < mean.length; x++) {
        mean[x] += grey.at(x, y) / rows;
      }
    }
    return mean;
  }
}
