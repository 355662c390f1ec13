package leadlight.row.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import leadlight.model.picture.Plane;
import leadlight.row.tuning.RowTuning;

/**
 * The directions of straight edges in a picture, modulo a quarter turn: a histogram of gradient
 * directions weighted by gradient strength. Leads, lands and bodies are rectangles, so a row's
 * direction is among its peaks.
 */
public final class DirectionSearch {

  private static final int BINS = 180;
  private static final double BIN_RAD = Math.PI / 2 / BINS;
  private final RowTuning tuning;

  public DirectionSearch(RowTuning tuning) {
    this.tuning = tuning;
  }

  /** Directions in [0, pi/2), strongest first. */
  public List<Double> directions(Plane grey) {
    double[] smooth = smoothed(histogram(grey));
    List<Integer> peaks = new ArrayList<>();
    double highest = 0;
    for (int i = 0; i < BINS; i++) {
      if (smooth[i] >= smooth[(i + 1) % BINS] && smooth[i] > smooth[(i + BINS - 1) % BINS]) {
        peaks.add(i);
        highest = Math.max(highest, smooth[i]);
      }
    }
    peaks.sort(Comparator.comparingDouble((Integer i) -> -smooth[i]));
    return chosen(peaks, smooth, highest);
  }

  private List<Double> chosen(List<Integer> peaks, double[] smooth, double highest) {
    List<Double> directions = new ArrayList<>();
    for (int peak : peaks) {
      double angle = (peak + 0.5) * BIN_RAD;
      boolean apart =
          directions.stream()
              .allMatch(
                  d ->
                      Math.abs(Math.sin(2 * (d - angle)))
                          > Math.sin(2 * tuning.direction().apartRad()));
      if (apart
          && smooth[peak] >= tuning.direction().peakShare() * highest
          && directions.size() < tuning.direction().most()) {
        directions.add(angle);
      }
    }
    return directions;
  }

  private static double[] histogram(Plane grey) {
    double[] bins = new double[BINS];
    float[] d = grey.data();
    int w = grey.width();
    for (int y = 1; y < grey.height() - 1; y++) {
      for (int i = y * w + 1; i < (y + 1) * w - 1; i++) {
        double gx =
            2 * (d[i + 1] - d[i - 1]) + d[i + 1 - w] - d[i - 1 - w] + d[i + 1 + w] - d[i - 1 + w];
        double gy =
            2 * (d[i + w] - d[i - w]) + d[i + w - 1] - d[i - w - 1] + d[i + w + 1] - d[i - w + 1];
        double strength = gx * gx + gy * gy;
        if (strength > 400) {
          double angle = Math.atan2(gy, gx) + 2 * Math.PI;
          bins[(int) (angle / BIN_RAD) % BINS] += Math.sqrt(strength);
        }
      }
    }
    return bins;
  }

  private static double[] smoothed(double[] bins) {
    double[] out = new double[BINS];
    for (int i = 0; i < BINS; i++) {
      for (int k = -5; k <= 5; k++) {
        out[i] += bins[(i + k + BINS) % BINS] * Math.exp(-k * k / 8.0);
      }
    }
    return out;
  }
}
