package leadlight.report.words;

import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.model.result.GradedLeg;
import leadlight.model.result.LegSet;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/** Anchor legs as people read them, in English. */
public final class LegWords {

  private static final Sentences SENTENCES = Sentences.english();

  private LegWords() {}

  /** "leg 2", or where it lies. */
  public static String name(GradedLeg leg) {
    return leg.number().isPresent()
        ? "leg " + leg.number().getAsInt()
        : String.format(Locale.ROOT, "leg at %.0f, %.0f", leg.centre().x(), leg.centre().y());
  }

  public static String name(LegSet.Joined leg) {
    if (leg.number().isPresent()) {
      return "leg " + leg.number().getAsInt();
    }
    return leg.seen().isEmpty() ? "a leg" : name(leg.seen().get(0).leg());
  }

  public static String measured(GradedLeg leg) {
    return String.format(
        Locale.ROOT,
        "solder meets the leg over %.0f degrees (u %.0f), covers %.0f %% of the land",
        leg.wetted().value(),
        leg.wetted().u(),
        100 * leg.covered().value());
  }

  public static String kinds(GradedLeg leg) {
    return leg.findings().stream().map(Words::kind).collect(Collectors.joining(", "));
  }

  /** What each photo says, and why it is not judged. */
  public static String said(LegSet.Joined leg) {
    String seen =
        leg.seen().stream()
            .map(it -> it.side().id() + " side " + seen(it))
            .collect(Collectors.joining("; "));
    String why = SENTENCES.joined(leg.doubts());
    return seen.isEmpty() ? why : why.isEmpty() ? seen : seen + "; " + why;
  }

  private static String seen(LegSet.Seen from) {
    GradedLeg leg = from.leg();
    if (from.side() == BoardSide.COMPONENT && leg.verdict() == Verdict.UNJUDGED) {
      return "not judged";
    }
    String kinds = kinds(leg);
    return (kinds.isEmpty() ? VerdictWords.plain(leg.verdict()) : kinds) + ": " + measured(leg);
  }
}
