package leadlight.page.words;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.text.Messages;
import leadlight.text.VerdictWords;

/** Verdicts in words. */
public final class Verdicts {

  /** A verdict with how many joints, or legs, have it. */
  public record Count(String verdict, String text) {}

  private Verdicts() {}

  public static String headline(ScoredPhoto scored, Messages words) {
    if (scored.joints().isEmpty()) {
      return words.get("headline.no-row");
    }
    if (scored.verdict() == Verdict.DEFECT) {
      return words.counted("headline.defect", count(scored, Verdict.DEFECT));
    }
    return words.get("headline." + scored.verdict().id());
  }

  /** Of a connector: its joints, and its anchor legs. */
  public static String headline(ScoredPhoto scored, LegSet legs, Messages words) {
    if (scored.joints().isEmpty()) {
      return legs.count(Verdict.DEFECT) > 0
          ? words.get("headline.connector.no-row", legs.count(Verdict.DEFECT), legs.legs().size())
          : words.get("headline.no-row");
    }
    return scored.verdict() == Verdict.DEFECT
        ? words.get(
            "headline.connector.defect",
            count(scored, Verdict.DEFECT),
            scored.joints().size(),
            legs.count(Verdict.DEFECT),
            legs.legs().size())
        : words.get("headline.connector." + scored.verdict().id());
  }

  /** The joints by verdict, then the anchor legs, if there are any. */
  public static List<Count> counts(ScoredPhoto scored, LegSet legs, Messages words) {
    List<Count> counts = new ArrayList<>();
    for (Verdict verdict : Verdict.WORST_FIRST) {
      int count = count(scored, verdict);
      if (count > 0) {
        counts.add(new Count(verdict.id(), VerdictWords.counted(verdict, count, words)));
      }
    }
    for (Verdict verdict : Verdict.WORST_FIRST) {
      int count = legs.count(verdict);
      if (count > 0) {
        counts.add(
            new Count(
                verdict.id(),
                words.get("count.legs", VerdictWords.counted(verdict, count, words))));
      }
    }
    return counts;
  }

  public static int count(ScoredPhoto scored, Verdict verdict) {
    return (int) scored.joints().stream().filter(joint -> joint.verdict() == verdict).count();
  }
}
