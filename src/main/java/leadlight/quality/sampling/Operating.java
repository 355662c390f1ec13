package leadlight.quality.sampling;

import org.apache.commons.statistics.distribution.BetaDistribution;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * The operating characteristic of a plan: with which probability it accepts a lot of a given
 * quality. Exact. Between Ac and Re of a reduced plan the lot is accepted, too.
 */
public final class Operating {

  private Operating() {}

  /**
   * Probability of acceptance for a lot from a process (binomial).
   *
   * @param share of nonconforming units, 0 to 1
   */
  public static double ofProcess(Plan plan, double share) {
    return BinomialDistribution.of(plan.size(), share).cumulativeProbability(plan.refuse() - 1);
  }

  /**
   * Probability of acceptance for one lot of known size (hypergeometric).
   *
   * @param nonconforming units of the lot, at most {@code lot}
   */
  public static double ofLot(Plan plan, int lot, int nonconforming) {
    return HypergeometricDistribution.of(lot, nonconforming, plan.size())
        .cumulativeProbability(plan.refuse() - 1);
  }

  /** Most nonconforming units of a lot that is accepted at least so often; -1 if even 0 is not. */
  public static int mostOfLot(Plan plan, int lot, double acceptance) {
    int units = -1;
    while (units < lot && ofLot(plan, lot, units + 1) >= acceptance) {
      units++;
    }
    return units;
  }

  /**
   * Share of nonconforming units that is accepted with a probability: binomial, solved by the beta
   * distribution (Clopper and Pearson 1934). 1 if the plan accepts everything.
   */
  public static double qualityAt(Plan plan, double acceptance) {
    int most = plan.refuse() - 1;
    if (most >= plan.size()) {
      return 1;
    }
    return BetaDistribution.of(most + 1.0, (double) plan.size() - most)
        .inverseSurvivalProbability(acceptance);
  }
}
