package leadlight.row.find;

import java.util.ArrayList;
import java.util.List;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Pyramid;

/**
 * Looks for a comb of a known number of teeth in a picture turned so that the row lies level: in
 * sliding bands, each cell of one pitch is correlated with a wave of that pitch, each normalised by
 * its own energy so that no highlight outweighs the others; cells that agree in phase make the
 * score, cells beyond both ends that agree as well lessen it.
 */
final class CombSearch {

  private static final RowTuning.Comb COMB = RowTuning.builtIn().comb();

  static final double LEAST_PITCH = 5;
  static final double MOST_PITCH = 11;
  private static final int BAND = 6;
  private static final int BAND_STEP = 3;

  private final int teeth;

  CombSearch(int teeth) {
    this.teeth = teeth;
  }

  /**
   * @param photoPxPerPx how far the picture is reduced
   * @param angleRad direction of the row looked for
   */
  List<CombHit> search(Pyramid photo, double photoPxPerPx, double angleRad) {
    TurnedPicture turned = TurnedPicture.of(photo, photoPxPerPx, angleRad);
    List<CombHit> hits = new ArrayList<>();
    double[] pitches = pitches(turned.grey().width());
    double[][] cos = new double[pitches.length][];
    double[][] sin = new double[pitches.length][];
    for (int i = 0; i < pitches.length; i++) {
      cos[i] = wave(pitches[i], 0, turned.grey().width());
      sin[i] = wave(pitches[i], -Math.PI / 2, turned.grey().width());
    }
    double[][] bands = bands(turned);
    double floor = floor(bands);
    for (int b = 0; b < bands.length; b++) {
      int y = b * BAND_STEP + BAND / 2;
      int[] inside = turned.inside(y);
      if (inside[1] - inside[0] < (teeth - 1) * LEAST_PITCH || isFlat(bands[b], floor)) {
        continue;
      }
      for (int i = 0; i < pitches.length; i++) {
        best(
            bands[b],
            cos[i],
            sin[i],
            pitches[i],
            floor,
            inside,
            (x, pitch, score) ->
                hits.add(
                    new CombHit(
                        turned.toPhoto().map(x, y), angleRad, pitch * photoPxPerPx, score)));
      }
    }
    return hits;
  }

  private interface Sink {
    void accept(double x, double pitch, double score);
  }

  private boolean isFlat(double[] band, double floor) {
    int strong = 0;
    for (double v : band) {
      if (Math.abs(v) > floor) {
        strong++;
      }
    }
    return strong < teeth;
  }

  /** Best window of the band for one pitch, if it is any good. */
  private void best(
      double[] w, double[] cos, double[] sin, double pitch, double floor, int[] inside, Sink sink) {
    int first = inside[0];
    int cells = (int) ((inside[1] - first - pitch) / (pitch / 2)) + 1;
    if (cells < 2 * teeth - 1) {
      return;
    }
    int n = inside[1] - first + 1;
    double[] a = new double[n];
    double[] s = new double[n];
    double[] e = new double[n];
    for (int i = 1; i < n; i++) {
      double v = w[first + i - 1];
      a[i] = a[i - 1] + v * cos[first + i - 1];
      s[i] = s[i - 1] + v * sin[first + i - 1];
      e[i] = e[i - 1] + v * v;
    }
    double[] re = new double[cells];
    double[] im = new double[cells];
    double eps = floor * floor * pitch / 2;
    for (int m = 0; m < cells; m++) {
      int from = (int) Math.round(m * pitch / 2);
      int to = Math.min(n - 1, (int) Math.round(m * pitch / 2 + pitch));
      double norm = Math.sqrt((e[to] - e[from] + eps) * pitch / 2);
      re[m] = (a[to] - a[from]) / norm;
      im[m] = (s[to] - s[from]) / norm;
    }
    double bestScore = 0;
    int bestCell = -1;
    for (int parity = 0; parity < 2; parity++) {
      double sumRe = 0;
      double sumIm = 0;
      for (int m = parity; m < cells; m += 2) {
        sumRe += re[m];
        sumIm += im[m];
        int start = m - 2 * (teeth - 1);
        if (start < parity) {
          continue;
        }
        if (start >= 2) {
          sumRe -= re[start - 2];
          sumIm -= im[start - 2];
        }
        double length = Math.sqrt(sumRe * sumRe + sumIm * sumIm);
        if (length <= teeth * Math.max(bestScore, COMB.leastLock())) {
          continue;
        }
        double score =
            length / teeth
                - COMB.beyondWeight()
                    * (beyond(re, im, start - 2, sumRe / length, sumIm / length)
                        + beyond(re, im, start - 4, sumRe / length, sumIm / length)
                        + beyond(re, im, m + 2, sumRe / length, sumIm / length)
                        + beyond(re, im, m + 4, sumRe / length, sumIm / length));
        if (score > bestScore) {
          bestScore = score;
          bestCell = start;
        }
      }
    }
    if (bestCell >= 0) {
      sink.accept(first + (bestCell / 2.0 + teeth / 2.0) * pitch - 0.5, pitch, bestScore);
    }
  }

  private static double beyond(double[] re, double[] im, int m, double dirRe, double dirIm) {
    if (m < 0 || m >= re.length) {
      return 0;
    }
    return Math.max(0, re[m] * dirRe + im[m] * dirIm);
  }

  private double[] pitches(int width) {
    double ratio = 1 + Math.max(0.01, Math.min(0.04, 0.6 / teeth));
    List<Double> list = new ArrayList<>();
    for (double p = LEAST_PITCH; p <= MOST_PITCH && p * (teeth - 1) < width; p *= ratio) {
      list.add(p);
    }
    return list.stream().mapToDouble(Double::doubleValue).toArray();
  }

  private static double[] wave(double pitch, double phase, int n) {
    double[] out = new double[n];
    for (int i = 0; i < n; i++) {
      out[i] = Math.cos(2 * Math.PI * i / pitch + phase);
    }
    return out;
  }

  /** Mean brightness down each band, less its own running mean along the row. */
  private static double[][] bands(TurnedPicture turned) {
    int w = turned.grey().width();
    int count = Math.max(0, (turned.grey().height() - BAND) / BAND_STEP + 1);
    float[] d = turned.grey().data();
    double[][] bands = new double[count][w];
    for (int b = 0; b < count; b++) {
      double[] mean = new double[w];
      for (int y = b * BAND_STEP; y < b * BAND_STEP + BAND; y++) {
        for (int x = 0; x < w; x++) {
          mean[x] += d[y * w + x] / BAND;
        }
      }
      highPass(mean, bands[b], turned.inside(b * BAND_STEP + BAND / 2));
    }
    return bands;
  }

  private static void highPass(double[] mean, double[] out, int[] inside) {
    double[] sum = new double[mean.length + 1];
    for (int x = 0; x < mean.length; x++) {
      sum[x + 1] = sum[x] + mean[x];
    }
    int half = (int) MOST_PITCH;
    for (int x = inside[0]; x < inside[1]; x++) {
      int from = Math.max(inside[0], x - half);
      int to = Math.min(inside[1], x + half + 1);
      out[x] = mean[x] - (sum[to] - sum[from]) / (to - from);
    }
  }

  private static double floor(double[][] bands) {
    double sum = 0;
    long n = 0;
    for (double[] band : bands) {
      for (double v : band) {
        sum += v * v;
        n++;
      }
    }
    return Math.max(1.5, 0.3 * Math.sqrt(sum / Math.max(1, n)));
  }
}
