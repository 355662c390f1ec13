package leadlight.quality;

import java.util.List;
import leadlight.quality.SwitchingRules.LotResult;
import leadlight.statistics.Rate;

/**
 * What a sample says of its lot.
 *
 * @param plan by which it was drawn
 * @param found nonconforming units among those inspected
 * @param result accepted or not
 * @param reasons why, a sentence each
 */
public record LotDecision(Plan plan, Rate found, LotResult result, List<String> reasons) {

  /**
   * Decides. The rate's {@code of} must be the plan's sample size.
   *
   * @param lot size of the lot
   */
  public static LotDecision of(Plan plan, int lot, Rate found) {
    if (found.of() != plan.size()) {
      throw new IllegalArgumentException(found.of() + " were inspected, not " + plan.size());
    }
    LotResult result =
        found.count() <= plan.accept()
            ? LotResult.ACCEPTED
            : found.count() < plan.refuse() ? LotResult.ACCEPTED_ENDS_REDUCED : LotResult.REFUSED;
    return new LotDecision(plan, found, result, reasons(plan, lot, found, result));
  }

  private static List<String> reasons(Plan plan, int lot, Rate found, LotResult result) {
    String against =
        "%d nonconforming in %d inspected; the plan accepts with %d or fewer and refuses with %d or more."
            .formatted(found.count(), plan.size(), plan.accept(), plan.refuse());
    String verdict =
        switch (result) {
          case ACCEPTED -> "The lot is accepted.";
          case ACCEPTED_ENDS_REDUCED ->
              "The lot is accepted, but the next one gets normal inspection.";
          case RESUMED -> throw new IllegalStateException("a sample resumes nothing");
          case REFUSED -> "The lot is refused: sort it fully or agree on what else is to be done.";
        };
    String share =
        plan.size() >= lot
            ? "The whole lot was inspected, so this is its quality."
            : "Nonconforming in the sample: %s, 95 %% Wilson interval."
                .formatted(Words.rate(found));
    String limits =
        ("What the plan can tell: a process with %s nonconforming passes 95 times in 100, one with"
                + " %s passes 10 times in 100.")
            .formatted(
                Words.percent(Operating.qualityAt(plan, 0.95)),
                Words.percent(Operating.qualityAt(plan, 0.10)));
    return List.of(
        verdict, against, share, limits, "Found units are mended or taken out either way.");
  }
}
