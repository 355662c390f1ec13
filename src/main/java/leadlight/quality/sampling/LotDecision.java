package leadlight.quality.sampling;

import java.util.List;
import leadlight.quality.Words;
import leadlight.quality.sampling.SwitchingRules.LotResult;
import leadlight.statistics.Rate;

/**
 * What a sample says of its lot.
 *
 * @param plan by which it was drawn
 * @param found nonconforming units among those inspected
 * @param result accepted or not
 * @param reasons why, a sentence each
 */
public record LotDecision(Inspection plan, Rate found, LotResult result, List<String> reasons) {

  /**
   * Decides. The rate's {@code of} must be a number of units at which the plan decides.
   *
   * @param lot size of the lot
   */
  public static LotDecision of(Inspection plan, int lot, Rate found) {
    LotResult result =
        plan.after(found.of(), found.count())
            .orElseThrow(() -> new IllegalArgumentException("the plan goes on after " + found));
    return new LotDecision(plan, found, result, reasons(plan, lot, found, result));
  }

  private static List<String> reasons(Inspection plan, int lot, Rate found, LotResult result) {
    String verdict =
        switch (result) {
          case ACCEPTED -> "The lot is accepted.";
          case ACCEPTED_ENDS_REDUCED ->
              "The lot is accepted, but the next one gets normal inspection.";
          case RESUMED -> throw new IllegalStateException("a sample resumes nothing");
          case REFUSED -> "The lot is refused: sort it fully or agree on what else is to be done.";
        };
    String limits =
        ("What the plan can tell: a process with %s nonconforming passes 95 times in 100, one with"
                + " %s passes 10 times in 100.")
            .formatted(Words.percent(plan.qualityAt(0.95)), Words.percent(plan.qualityAt(0.10)));
    return List.of(
        verdict,
        plan.against(found.of(), found.count()),
        share(plan, lot, found),
        limits,
        "Found units are mended or taken out either way.");
  }

  private static String share(Inspection plan, int lot, Rate found) {
    if (found.of() >= lot) {
      return "The whole lot was inspected, so this is its quality.";
    }
    return plan.inFull()
        ? "Nonconforming in the sample: %s, 95 %% Wilson interval.".formatted(Words.rate(found))
        : "Nonconforming in the sample: %d of %d. A sample that may stop early says whether, not how much: no interval is given."
            .formatted(found.count(), found.of());
  }
}
