package leadlight.quality.sampling;

import leadlight.model.UserError;
import leadlight.quality.Words;

/**
 * The smallest plan that keeps two risks for one lot, exact (hypergeometric).
 *
 * @param goodShare quality that the producer wants accepted, share of nonconforming units
 * @param producerRisk most probability that it is refused
 * @param badShare quality that the consumer wants refused
 * @param consumerRisk most probability that it is accepted
 */
public record RiskPlan(
    double goodShare, double producerRisk, double badShare, double consumerRisk) {

  /**
   * Checks the figures.
   *
   * @throws UserError if a share or a risk makes no sense
   */
  public RiskPlan {
    if (!(goodShare >= 0 && goodShare < badShare && badShare <= 1)) {
      throw new UserError(
          "the producer's quality must be below the consumer's, both 0 to 100 %; give two such");
    }
    if (!(producerRisk > 0 && producerRisk < 1 && consumerRisk > 0 && consumerRisk < 1)) {
      throw new UserError("a risk lies between 0 and 100 %, as 5 or 10; give two such");
    }
  }

  /**
   * The plan with the smallest sample, and of those the smallest acceptance number. Counts in the
   * lot are rounded to the plan's harm: up for the good lot, down (to one at least) for the bad.
   *
   * @throws UserError if the two qualities are the same count in so small a lot
   */
  public Plan of(int lot) {
    int good = goodCount(lot);
    int bad = badCount(lot);
    if (lot < 2 || good >= bad) {
      throw new UserError(
          "in a lot of %d the two qualities are %d and %d units; take them further apart"
              .formatted(lot, good, bad));
    }
    int accept = 0;
    for (int size = 1; size <= lot; size++) {
      // A larger sample never allows a smaller acceptance number: what was too strict stays so.
      while (accept < size && refusesGood(lot, good, size, accept)) {
        accept++;
      }
      Plan plan = new Plan(size, accept, accept + 1, why(lot, good, bad));
      if (Operating.ofLot(plan, lot, bad) <= consumerRisk) {
        return plan;
      }
    }
    throw new IllegalStateException("a full inspection tells " + good + " from " + bad);
  }

  private boolean refusesGood(int lot, int good, int size, int accept) {
    return 1 - Operating.ofLot(new Plan(size, accept, accept + 1, ""), lot, good) > producerRisk;
  }

  /** Nonconforming units in a lot of the producer's quality. */
  public int goodCount(int lot) {
    return (int) Math.ceil(goodShare * lot - 1e-9);
  }

  /** Nonconforming units in a lot of the consumer's quality. */
  public int badCount(int lot) {
    return Math.max(1, (int) Math.floor(badShare * lot + 1e-9));
  }

  private String why(int lot, int good, int bad) {
    return ("exact hypergeometric for this lot of %d: with %d nonconforming refused at most %s, "
            + "with %d accepted at most %s of the time")
        .formatted(lot, good, Words.percent(producerRisk), bad, Words.percent(consumerRisk));
  }
}
