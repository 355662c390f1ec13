package leadlight.joint.cut;

import java.util.Arrays;
import java.util.List;
import leadlight.numeric.Quantiles;

/** Plain statistics of short arrays. */
public final class Stats {

  /** Makes the median absolute deviation a standard deviation for normal data: 1 / Phi^-1(3/4). */
  private static final double MAD_TO_SIGMA = 1.4826;

  private Stats() {}

  /** Place by place, the lower middle value of several planes. */
  public static float[] middle(List<float[]> planes) {
    float[] middle = new float[planes.get(0).length];
    float[] pixel = new float[planes.size()];
    for (int i = 0; i < middle.length; i++) {
      for (int k = 0; k < pixel.length; k++) {
        pixel[k] = planes.get(k)[i];
      }
      Arrays.sort(pixel);
      middle[i] = pixel[(pixel.length - 1) / 2];
    }
    return middle;
  }

  /** Median absolute deviation, scaled to a standard deviation. */
  public static double spread(double[] values) {
    double middle = Quantiles.middle(values);
    return MAD_TO_SIGMA
        * Quantiles.middle(Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray());
  }

  public static double mean(double[] values) {
    return Arrays.stream(values).average().orElse(0);
  }

  /** Root mean square distance from the mean. */
  public static double deviation(double[] values) {
    double mean = mean(values);
    double sum = 0;
    for (double value : values) {
      sum += (value - mean) * (value - mean);
    }
    return Math.sqrt(sum / values.length);
  }

  public static double greatest(double[] values) {
    return Arrays.stream(values).max().orElse(0);
  }

  public static double least(double[] values) {
    return Arrays.stream(values).min().orElse(0);
  }

  /** The binomial kernel 1 4 6 4 1, ends repeated: takes off single-pixel noise. */
  public static double[] smoothed(double[] values) {
    int last = values.length - 1;
    double[] out = new double[values.length];
    for (int i = 0; i <= last; i++) {
      out[i] =
          (values[Math.max(0, i - 2)]
                  + 4 * values[Math.max(0, i - 1)]
                  + 6 * values[i]
                  + 4 * values[Math.min(last, i + 1)]
                  + values[Math.min(last, i + 2)])
              / 16;
    }
    return out;
  }

  /** Central differences a pitch. */
  public static double[] slope(double[] values) {
    int last = values.length - 1;
    double[] out = new double[values.length];
    for (int i = 0; i <= last; i++) {
      int before = Math.max(0, i - 1);
      int after = Math.min(last, i + 1);
      out[i] = (values[after] - values[before]) * PatchGrid.DENSITY / Math.max(1, after - before);
    }
    return out;
  }

  public static int indexOfGreatest(double[] values) {
    int best = 0;
    for (int i = 1; i < values.length; i++) {
      if (values[i] > values[best]) {
        best = i;
      }
    }
    return best;
  }

  public static double[] negated(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }

  /** Mean absolute difference of neighbours, a pitch. */
  public static double roughness(double[] values) {
    double sum = 0;
    for (int i = 1; i < values.length; i++) {
      sum += Math.abs(values[i] - values[i - 1]);
    }
    return sum * PatchGrid.DENSITY / Math.max(1, values.length - 1);
  }
}
