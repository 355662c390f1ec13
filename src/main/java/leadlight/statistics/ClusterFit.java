package leadlight.statistics;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.data.DataFile;
import org.apache.commons.numbers.gamma.LogGamma;

/**
 * What counts in clusters tell of the share and of the likeness within a cluster, both at once.
 *
 * <p>Counts are taken as beta-binomial (Skellam 1948, Journal of the Royal Statistical Society B
 * 10:257-261). Where few events were met the likeness shows itself badly, so none is chosen: all
 * are weighed by how well they fit, after the prior of {@code models/statistics/clusters.json}. The
 * share has Jeffreys' prior; its interval is the middle 95 % of what the data leave (Brown, Cai and
 * DasGupta 2001, Statistical Science 16:101-133, for units that stand alone). By two passes over a
 * grid in the logit of the share, the second where the first left any weight.
 *
 * @param lower lower end of the 95 % interval of the share
 * @param upper upper end
 * @param likeness mean intraclass correlation that the data leave, 0 to 1
 */
record ClusterFit(double lower, double upper, double likeness) {

  private static final int LIKENESSES = 40;
  private static final int COARSE = 60;
  private static final int FINE = 200;

  /** Logit of the first and last share looked at: two in a thousand million from either end. */
  private static final double FARTHEST = 20;

  /** Logarithm of a weight, by the largest, from which on down nothing is to be seen any more. */
  private static final double NOTHING = -25;

  /** Fits what has a unit at least. */
  static ClusterFit of(List<ClusterRate.Part> parts) {
    Likelihood likelihood = new Likelihood(parts);
    Grid coarse = new Grid(likelihood, -FARTHEST, FARTHEST, COARSE);
    return new Grid(likelihood, coarse.firstSeen(), coarse.lastSeen(), FINE).fit();
  }

  /** How well shares and likenesses fit, on a grid of both. */
  private static final class Grid {

    private final double from;
    private final double step;
    private final double[] likenesses = new double[LIKENESSES];
    private final double[][] logs;

    /** Logarithm of the largest weight of each share. */
    private final double[] best;

    Grid(Likelihood likelihood, double from, double to, int shares) {
      this.from = from;
      step = (to - from) / (shares - 1);
      for (int j = 0; j < LIKENESSES; j++) {
        // Middles of parts that the prior makes equally likely: Beta(1, b) has this quantile.
        double quantile = (j + 0.5) / LIKENESSES;
        likenesses[j] = 1 - Math.pow(1 - quantile, 1 / Rules.BUILT_IN.likenessPrior());
      }
      logs = new double[shares][LIKENESSES];
      best = new double[shares];
      for (int i = 0; i < shares; i++) {
        double share = 1 / (1 + Math.exp(-(from + i * step)));
        double rest = 1 / (1 + Math.exp(from + i * step));
        double prior = Rules.BUILT_IN.sharePrior() * (Math.log(share) + Math.log(rest));
        for (int j = 0; j < LIKENESSES; j++) {
          double size = (1 - likenesses[j]) / likenesses[j];
          logs[i][j] = prior + likelihood.log(share * size, rest * size);
        }
        best[i] = Arrays.stream(logs[i]).max().orElseThrow();
      }
    }

    private double most() {
      return Arrays.stream(best).max().orElseThrow();
    }

    double firstSeen() {
      int i = 0;
      while (best[i] < most() + NOTHING) {
        i++;
      }
      return from + step * Math.max(0, i - 1);
    }

    double lastSeen() {
      int i = best.length - 1;
      while (best[i] < most() + NOTHING) {
        i--;
      }
      return from + step * Math.min(best.length - 1, i + 1);
    }

    ClusterFit fit() {
      double most = most();
      double[] weights = new double[best.length];
      double sum = 0;
      double alike = 0;
      for (int i = 0; i < weights.length; i++) {
        for (int j = 0; j < LIKENESSES; j++) {
          double weight = Math.exp(logs[i][j] - most);
          weights[i] += weight;
          alike += weight * likenesses[j];
        }
        sum += weights[i];
      }
      return new ClusterFit(quantile(weights, 0.025), quantile(weights, 0.975), alike / sum);
    }

    /** By trapezia between shares. */
    private double quantile(double[] weights, double part) {
      double all = 0;
      for (int i = 1; i < weights.length; i++) {
        all += (weights[i - 1] + weights[i]) / 2;
      }
      double wanted = part * all;
      int i = 1;
      double more = (weights[0] + weights[1]) / 2;
      while (i < weights.length - 1 && wanted > more) {
        wanted -= more;
        i++;
        more = (weights[i - 1] + weights[i]) / 2;
      }
      return 1 / (1 + Math.exp(-(from + step * (i - 1 + wanted / more))));
    }
  }

  /**
   * The beta-binomial likelihood but for what no parameter changes; equal clusters counted once.
   */
  private static final class Likelihood {

    private final Map<Integer, Integer> hits = new TreeMap<>();
    private final Map<Integer, Integer> misses = new TreeMap<>();
    private final Map<Integer, Integer> sizes = new TreeMap<>();

    Likelihood(List<ClusterRate.Part> parts) {
      for (ClusterRate.Part part : parts) {
        hits.merge(part.count(), 1, Integer::sum);
        misses.merge(part.of() - part.count(), 1, Integer::sum);
        sizes.merge(part.of(), 1, Integer::sum);
      }
    }

    double log(double a, double b) {
      return risen(hits, a) + risen(misses, b) - risen(sizes, a + b);
    }

    /** Logarithm of the product of a (a + 1) ... (a + n - 1) over all n. */
    private static double risen(Map<Integer, Integer> counts, double a) {
      double first = LogGamma.value(a);
      double sum = 0;
      for (Map.Entry<Integer, Integer> count : counts.entrySet()) {
        if (count.getKey() > 0) {
          sum += count.getValue() * (LogGamma.value(a + count.getKey()) - first);
        }
      }
      return sum;
    }
  }

  /**
   * What is thought before any unit is seen: {@code models/statistics/clusters.json}.
   *
   * @param likenessPrior b of the likeness's Beta(1, b)
   * @param sharePrior both parameters of the share's beta
   * @param source where they come from
   */
  record Rules(
      @JsonProperty(required = true) double likenessPrior,
      @JsonProperty(required = true) double sharePrior,
      @JsonProperty(required = true) String source) {

    static final Rules BUILT_IN = DataFile.builtIn("statistics/clusters.json").read(Rules.class);
  }
}
