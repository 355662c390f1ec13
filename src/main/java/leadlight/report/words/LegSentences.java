package leadlight.report.words;

import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * What pages and pictures say of an anchor leg: what each photo shows, and why it is not judged.
 */
public final class LegSentences {

  private LegSentences() {}

  public static String of(LegSet.Joined leg, Messages words, Sentences sentences) {
    String seen =
        leg.seen().stream()
            .map(it -> words.get("legs.seen." + it.side().id(), seen(it, words)))
            .collect(Collectors.joining("; "));
    String why = sentences.joined(leg.doubts());
    return seen.isEmpty() ? why : why.isEmpty() ? seen : seen + "; " + why;
  }

  private static String seen(LegSet.Seen from, Messages words) {
    GradedLeg leg = from.leg();
    if (from.side() == BoardSide.COMPONENT && leg.verdict() == Verdict.UNJUDGED) {
      return words.get("legs.seen.unread");
    }
    String kinds =
        leg.findings().stream()
            .map(kind -> words.get("kind." + kind.id()))
            .collect(Collectors.joining(", "));
    String what = kinds.isEmpty() ? VerdictWords.of(leg.verdict(), words) : kinds;
    return words.get(
        "legs.measured",
        what,
        words.number(leg.wetted().value(), 0),
        words.number(leg.wetted().u(), 0),
        words.number(100 * leg.covered().value(), 0));
  }
}
