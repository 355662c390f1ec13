package leadlight.statistics;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
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
 * grid even in the logits of both, the second where the first left any weight: so clusters that are
 * hit as a whole or not at all, with a likeness next to 1, are told as finely as clusters of none.
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

  /** Logit of the least and greatest likeness: one in ten thousand from either end. */
  private static final double ALIKE = 9.2;

  /** Logarithm of a weight, by the largest, from which on down nothing is to be seen any more. */
  private static final double NOTHING = -25;

  /** Fits what has a unit at least. */
  static ClusterFit of(List<ClusterRate.Part> parts) {
    Likelihood likelihood = new Likelihood(parts);
    Axis shares = new Axis(-FARTHEST, FARTHEST, COARSE);
    Axis likenesses = new Axis(-ALIKE, ALIKE, LIKENESSES);
    Grid coarse = new Grid(likelihood, shares, likenesses);
    Axis finer = shares.where(coarse.bestOfShares(), FINE);
    return new Grid(likelihood, finer, likenesses.where(coarse.bestOfLikenesses(), LIKENESSES))
        .fit();
  }

  /** Places that are even in a logit. */
  private record Axis(double from, double to, int count) {

    double step() {
      return (to - from) / (count - 1);
    }

    /** Value and rest to 1 at a place, which may lie between two. */
    double value(double place) {
      return 1 / (1 + Math.exp(-(from + place * step())));
    }

    double rest(double place) {
      return 1 / (1 + Math.exp(from + place * step()));
    }

    /** The part that any weight was seen in. */
    Axis where(double[] best, int places) {
      double least = Arrays.stream(best).max().orElseThrow() + NOTHING;
      int first = 0;
      while (best[first] < least) {
        first++;
      }
      int last = best.length - 1;
      while (best[last] < least) {
        last--;
      }
      return new Axis(
          from + step() * Math.max(0, first - 1),
          from + step() * Math.min(count - 1, last + 1),
          places);
    }
  }

  /** How well shares and likenesses fit, on a grid of both. */
  private static final class Grid {

    private final Axis shares;
    private final Axis likenesses;
    private final double[][] logs;

    Grid(Likelihood likelihood, Axis shares, Axis likenesses) {
      this.shares = shares;
      this.likenesses = likenesses;
      logs = new double[shares.count][likenesses.count];
      for (int i = 0; i < shares.count; i++) {
        double share = shares.value(i);
        double rest = shares.rest(i);
        double prior = Rules.BUILT_IN.sharePrior() * (Math.log(share) + Math.log(rest));
        for (int j = 0; j < likenesses.count; j++) {
          double alike = likenesses.value(j);
          double unlike = likenesses.rest(j);
          // Beta(1, b) in the logit: r (1 - r)^b.
          double own = Math.log(alike) + Rules.BUILT_IN.likenessPrior() * Math.log(unlike);
          double size = unlike / alike;
          logs[i][j] = prior + own + likelihood.log(share * size, rest * size);
        }
      }
    }

    /** Logarithm of the largest weight of each share. */
    double[] bestOfShares() {
      return Arrays.stream(logs).mapToDouble(it -> Arrays.stream(it).max().orElseThrow()).toArray();
    }

    double[] bestOfLikenesses() {
      return IntStream.range(0, likenesses.count)
          .mapToDouble(j -> Arrays.stream(logs).mapToDouble(it -> it[j]).max().orElseThrow())
          .toArray();
    }

    ClusterFit fit() {
      double most = Arrays.stream(bestOfShares()).max().orElseThrow();
      double[] weights = new double[shares.count];
      double sum = 0;
      double alike = 0;
      for (int i = 0; i < weights.length; i++) {
        for (int j = 0; j < likenesses.count; j++) {
          double weight = Math.exp(logs[i][j] - most);
          weights[i] += weight;
          alike += weight * likenesses.value(j);
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
      return shares.value(i - 1 + wanted / more);
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
