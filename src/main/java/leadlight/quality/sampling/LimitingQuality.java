package leadlight.quality.sampling;

import leadlight.model.UserError;
import leadlight.quality.Words;

/**
 * A plan for a lot that stands alone: of the limiting quality at most a stated share of such lots
 * is accepted (the principle of ISO 2859-2, whose tables are not carried), exactly for this lot.
 * Acceptance number 0 makes it a c = 0 plan.
 *
 * @param share limiting quality, share of nonconforming units
 * @param accept acceptance number
 * @param risk most probability that a lot of limiting quality is accepted; ISO 2859-2 takes 0.10
 */
public record LimitingQuality(double share, int accept, double risk) {

  /**
   * Checks the figures.
   *
   * @throws UserError if one makes no sense
   */
  public LimitingQuality {
    if (!(share > 0 && share <= 1 && risk > 0 && risk < 1 && accept >= 0)) {
      throw new UserError(
          "a limiting quality lies above 0 and up to 100 %, a risk between 0 and 100 %, an"
              + " acceptance number is 0 or more");
    }
  }

  /**
   * The smallest sample. Units in the lot are rounded down, to the plan's harm.
   *
   * @throws UserError if the acceptance number lets every such lot pass
   */
  public Plan of(int lot) {
    int bad = (int) Math.floor(share * lot + 1e-9);
    if (lot < 2 || bad <= accept) {
      throw new UserError(
          "in a lot of %d a limiting quality of %s is %d units; with acceptance number %d no sample"
                  .formatted(lot, Words.percent(share), bad, accept)
              + " tells it, take a smaller one");
    }
    for (int size = accept + 1; size < lot; size++) {
      Plan plan = new Plan(size, accept, accept + 1, why(lot, bad));
      if (Operating.ofLot(plan, lot, bad) <= risk) {
        return plan;
      }
    }
    return new Plan(lot, accept, accept + 1, why(lot, bad) + "; inspect all");
  }

  private String why(int lot, int bad) {
    return ("isolated lot, by the principle of ISO 2859-2 (exact hypergeometric, not its tables): of"
            + " lots of %d with %d nonconforming at most %s are accepted")
        .formatted(lot, bad, Words.percent(risk));
  }
}
