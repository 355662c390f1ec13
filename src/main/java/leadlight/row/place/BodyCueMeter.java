package leadlight.row.place;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.picture.Plane;
import leadlight.numeric.Quantiles;
import leadlight.row.find.RowFit;
import leadlight.row.strip.Lattice;
import leadlight.row.strip.LeadPicture;
import leadlight.row.strip.Strip;
import leadlight.row.tuning.BodyCues;

/**
 * What tells the body's side from the leads' open side, each as (upper side less lower side), so
 * that a row turned upside down gives the same numbers with the other sign.
 */
final class BodyCueMeter {

  private final RowFit fit;
  private final Lattice lattice;
  private final Strip strip;

  private BodyCueMeter(RowFit fit, Lattice lattice) {
    this.fit = fit;
    this.lattice = lattice;
    this.strip = fit.strip();
  }

  static BodyCues of(RowFit fit, Lattice lattice) {
    BodyCueMeter meter = new BodyCueMeter(fit, lattice);
    return meter.side(-1).less(meter.side(1));
  }

  private BodyCues side(int sign) {
    double end = sign < 0 ? fit.zone().from() : fit.zone().to();
    double[] gap = gapColour(fit.zone().middle() - 0.3, fit.zone().middle() + 0.3);
    double[] near = spanColour(end + sign * 0.4, end + sign * 0.9);
    double[] far = spanColour(end + sign * 0.9, end + sign * 1.6);
    double[] beside = besideColour();
    double[] width = widths(end, sign);
    return new BodyCues(
        squash(distance(gap, near), 20),
        squash(distance(gap, far), 20),
        squash(distance(beside, far), 20),
        squash(step(end, sign), 20),
        width[0],
        width[1],
        squash(roughness(end + sign * 0.4, end + sign * 1.4), 10),
        squash(rippleBeyond(end, sign), 10));
  }

  /** Grows like x/scale for small x and like a logarithm for large. */
  private static double squash(double x, double scale) {
    return Math.log1p(x / scale);
  }

  private double[] gapColour(double v0, double v1) {
    List<double[]> samples = new ArrayList<>();
    for (int k = 0; k + 1 < lattice.count(); k++) {
      double u = (lattice.u()[k] + lattice.u()[k + 1]) / 2;
      collect(samples, u - 0.08, u + 0.08, v0, v1);
    }
    return median(samples);
  }

  private double[] spanColour(double va, double vb) {
    List<double[]> samples = new ArrayList<>();
    for (double u = 0; u <= lattice.span(); u += 0.25) {
      collect(samples, u, u, Math.min(va, vb), Math.max(va, vb));
    }
    return median(samples);
  }

  private double[] besideColour() {
    List<double[]> samples = new ArrayList<>();
    collect(samples, -1.5, -0.7, fit.zone().from(), fit.zone().to());
    collect(
        samples, lattice.span() + 0.7, lattice.span() + 1.5, fit.zone().from(), fit.zone().to());
    return median(samples);
  }

  private void collect(List<double[]> samples, double u0, double u1, double v0, double v1) {
    int xa = (int) Math.round(strip.x(u0));
    int xb = (int) Math.round(strip.x(u1));
    int ya = (int) Math.round(strip.y(v0));
    int yb = (int) Math.round(strip.y(v1));
    for (int y = Math.max(0, ya); y <= Math.min(strip.height() - 1, yb); y += 2) {
      for (int x = Math.max(0, xa); x <= Math.min(strip.width() - 1, xb); x++) {
        samples.add(
            new double[] {
              strip.colour().red().at(x, y),
              strip.colour().green().at(x, y),
              strip.colour().blue().at(x, y)
            });
      }
    }
  }

  private static double[] median(List<double[]> samples) {
    double[] out = new double[3];
    for (int c = 0; c < 3; c++) {
      int channel = c;
      out[c] = Quantiles.median(samples.stream().mapToDouble(s -> s[channel]).toArray());
    }
    return out;
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }

  /** Largest step across the gaps near the zone's end: an edge that runs along the whole row. */
  private double step(double end, int sign) {
    double best = 0;
    for (double v = end - 0.6; v <= end + 0.9; v += 0.125) {
      double at = end + sign * (v - end);
      double[] a = gapColour(at - 0.3, at - 0.1);
      double[] b = gapColour(at + 0.1, at + 0.3);
      best = Math.max(best, distance(a, b));
    }
    return best;
  }

  /** Share of the cell that is nearer to the lead's middle than to the gap, at the zone's end. */
  private double[] widths(double end, int sign) {
    double vFrom = fit.zone().from() - 0.4;
    double vTo = fit.zone().to() + 0.4;
    Plane[] cells = new Plane[lattice.count()];
    for (int k = 0; k < cells.length; k++) {
      double u = lattice.u()[k];
      cells[k] = strip.cut(strip.ripple(), u - 0.5, u + 0.5, vFrom, vTo);
    }
    Plane picture = LeadPicture.median(cells);
    double[] out = new double[2];
    double[][] at = {{0.2, 0.5}, {0.5, 0.9}};
    int s = strip.perPitch();
    for (int part = 0; part < 2; part++) {
      double sum = 0;
      int n = 0;
      for (double d = at[part][0]; d <= at[part][1]; d += 1.0 / s) {
        int y = (int) Math.round((end - sign * d - vFrom) * s);
        if (y < 0 || y >= picture.height()) {
          continue;
        }
        double high =
            (picture.at(s / 2, y) + picture.at(s / 2 - 1, y) + picture.at(s / 2 + 1, y)) / 3;
        double low = (picture.at(0, y) + picture.at(s, y)) / 2;
        double area = 0;
        for (int x = 0; x <= s; x++) {
          area += Math.max(0, Math.min(1, (picture.at(x, y) - low) / (high - low + 1e-3)));
        }
        sum += area / (s + 1);
        n++;
      }
      out[part] = n == 0 ? 0 : sum / n;
    }
    return out;
  }

  /** How much brightness varies along the row beyond the zone. */
  private double roughness(double va, double vb) {
    int ya = (int) Math.round(strip.y(Math.min(va, vb)));
    int yb = (int) Math.round(strip.y(Math.max(va, vb)));
    int xa = (int) Math.round(strip.x(0));
    int xb = (int) Math.round(strip.x(lattice.span()));
    double sum = 0;
    int n = 0;
    for (int y = Math.max(0, ya); y <= Math.min(strip.height() - 1, yb); y++) {
      for (int x = xa; x <= xb; x++) {
        double r = strip.ripple().at(x, y);
        sum += r * r;
        n++;
      }
    }
    return n == 0 ? 0 : Math.sqrt(sum / n);
  }

  /** Rippled energy of the lead picture in its last tenths, against its whole. */
  private double rippleBeyond(double end, int sign) {
    return roughness(end - sign * 0.1, end + sign * 0.3);
  }
}
