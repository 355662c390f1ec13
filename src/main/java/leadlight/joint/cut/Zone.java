package leadlight.joint.cut;

import java.util.Arrays;
import leadlight.numeric.Quantiles;

/**
 * A rectangle of a straightened plane in pitch units, both edges included, with the plain
 * statistics that the measures need. Never empty: a rectangle thinner than a pixel is one pixel
 * wide.
 */
public final class Zone {

  private final float[] plane;
  private final int left;
  private final int right;
  private final int top;
  private final int bottom;

  public Zone(float[] plane, double x0, double x1, double y0, double y1) {
    this.plane = plane;
    this.left = PatchGrid.column(Math.min(x0, x1));
    this.right = PatchGrid.column(Math.max(x0, x1));
    this.top = PatchGrid.row(Math.min(y0, y1));
    this.bottom = PatchGrid.row(Math.max(y0, y1));
  }

  int width() {
    return right - left + 1;
  }

  int height() {
    return bottom - top + 1;
  }

  private double at(int x, int y) {
    return plane[(top + y) * PatchGrid.WIDTH + left + x];
  }

  /** All values, row by row. */
  public double[] values() {
    double[] values = new double[width() * height()];
    for (int y = 0, i = 0; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        values[i++] = at(x, y);
      }
    }
    return values;
  }

  /** Mean of each row: the profile along the lead. */
  public double[] alongLead() {
    double[] profile = new double[height()];
    for (int y = 0; y < profile.length; y++) {
      for (int x = 0; x < width(); x++) {
        profile[y] += at(x, y) / width();
      }
    }
    return profile;
  }

  /** Mean of each column: the profile across the lead. */
  public double[] acrossLead() {
    double[] profile = new double[width()];
    for (int x = 0; x < profile.length; x++) {
      for (int y = 0; y < height(); y++) {
        profile[x] += at(x, y) / height();
      }
    }
    return profile;
  }

  /** Least value of each row. */
  public double[] leastAlongLead() {
    return extremeAlongLead(-1);
  }

  /** Greatest value of each row. */
  public double[] greatestAlongLead() {
    return extremeAlongLead(1);
  }

  private double[] extremeAlongLead(int sign) {
    double[] profile = new double[height()];
    for (int y = 0; y < profile.length; y++) {
      double extreme = sign * at(0, y);
      for (int x = 1; x < width(); x++) {
        extreme = Math.max(extreme, sign * at(x, y));
      }
      profile[y] = sign * extreme;
    }
    return profile;
  }

  /** Mean absolute change a pitch across the lead. */
  public double roughnessAcross() {
    double sum = 0;
    for (int y = 0; y < height(); y++) {
      for (int x = 1; x < width(); x++) {
        sum += Math.abs(at(x, y) - at(x - 1, y));
      }
    }
    return sum * PatchGrid.DENSITY / Math.max(1, height() * (width() - 1));
  }

  /** Mean absolute change a pitch along the lead. */
  public double roughnessAlong() {
    double sum = 0;
    for (int y = 1; y < height(); y++) {
      for (int x = 0; x < width(); x++) {
        sum += Math.abs(at(x, y) - at(x, y - 1));
      }
    }
    return sum * PatchGrid.DENSITY / Math.max(1, width() * (height() - 1));
  }

  public double mean() {
    return Arrays.stream(values()).average().orElse(0);
  }

  public double median() {
    return Quantiles.of(values(), 0.5);
  }

  public double deviation() {
    return Stats.deviation(values());
  }

  public double quantile(double q) {
    return Quantiles.of(values(), q);
  }
}
