package leadlight.row.strip;

import java.util.Arrays;
import java.util.List;
import leadlight.model.picture.ColourPatch;
import leadlight.model.picture.Plane;
import leadlight.vision.Matching;

/**
 * The row's own picture of a lead: the strip, less its mean over a pitch, folded by the lattice,
 * the median of all leads pixel by pixel; and how well a place of the row matches it.
 *
 * @param ripples the strip's colours less their means over a pitch along the row
 * @param picture the median lead, one pitch wide
 * @param vFrom where the picture starts along the leads
 * @param vTo where it ends
 */
public record LeadPicture(ColourPatch ripples, ColourPatch picture, double vFrom, double vTo) {

  private static final double PLAY = 0.22;
  private static final double SEGMENT = 0.7;

  /** The strip's colours less their means over a pitch along the row. */
  public static ColourPatch ripples(Strip strip) {
    int s = strip.perPitch();
    return new ColourPatch(
        Strip.ripple(strip.colour().red(), s),
        Strip.ripple(strip.colour().green(), s),
        Strip.ripple(strip.colour().blue(), s));
  }

  /** The picture of the leads at the given places. */
  public static LeadPicture of(
      Strip strip, ColourPatch ripples, List<Double> places, double vFrom, double vTo) {
    ColourPatch[] cells =
        places.stream()
            .map(u -> strip.cut(ripples, u - 0.5, u + 0.5, vFrom, vTo))
            .toArray(ColourPatch[]::new);
    return new LeadPicture(
        ripples,
        new ColourPatch(
            median(Arrays.stream(cells).map(ColourPatch::red).toArray(Plane[]::new)),
            median(Arrays.stream(cells).map(ColourPatch::green).toArray(Plane[]::new)),
            median(Arrays.stream(cells).map(ColourPatch::blue).toArray(Plane[]::new))),
        vFrom,
        vTo);
  }

  public static Plane median(Plane[] cells) {
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

  /**
   * How much the place looks like a lead of this row, -1 to 1: within a little play, the mean over
   * segments along the lead of correlation times likeness of contrast, so that a blob or a trace
   * that resembles only part of a lead does not pass for one.
   */
  public double likeness(Strip strip, double u) {
    ColourPatch place =
        strip.cut(ripples, u - 0.5 - PLAY, u + 0.5 + PLAY, vFrom - PLAY, vTo + PLAY);
    Plane scores = Matching.correlation(place, picture);
    int best = 0;
    for (int i = 0; i < scores.data().length; i++) {
      best = scores.data()[i] > scores.data()[best] ? i : best;
    }
    int dx = best % scores.width();
    int dy = best / scores.width();
    int rows = Math.max(1, (int) Math.round(SEGMENT * strip.perPitch()));
    double sum = 0;
    double weights = 0;
    for (int y = 0; y < picture.height(); y += rows) {
      int to = Math.min(picture.height(), y + rows);
      double[] own = segment(place, dx, dy, y, to);
      double weight = Math.sqrt(own[1]);
      sum += weight * own[0];
      weights += weight;
    }
    return weights == 0 ? 0 : sum / weights;
  }

  /**
   * Likeness of rows y to {@code to} of the picture to the place, and the picture's energy there.
   */
  private double[] segment(ColourPatch place, int dx, int dy, int from, int to) {
    Plane[] a = {picture.red(), picture.green(), picture.blue()};
    Plane[] b = {place.red(), place.green(), place.blue()};
    double ab = 0;
    double aa = 0;
    double bb = 0;
    for (int c = 0; c < 3; c++) {
      for (int y = from; y < to; y++) {
        for (int x = 0; x < picture.width(); x++) {
          double p = a[c].at(x, y);
          double q = b[c].at(x + dx, y + dy);
          ab += p * q;
          aa += p * p;
          bb += q * q;
        }
      }
    }
    double noise = 3.0 * 3 * (to - from) * picture.width();
    return new double[] {2 * ab / (aa + bb + noise), aa};
  }
}
