package leadlight.page;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leadlight.model.GradedJoint;
import leadlight.model.ScoredPhoto;
import leadlight.model.Verdict;
import leadlight.text.Messages;

/** Verdicts and doubts in words. */
final class Verdicts {

  private static final Pattern POSSIBLY =
      Pattern.compile(
          "possibly (?:bridge to pin (\\d+)|([a-z-]+)) \\(chance (\\d+) %\\)(?:: (.*))?");

  private static final List<Verdict> WORST_FIRST =
      List.of(Verdict.DEFECT, Verdict.UNJUDGED, Verdict.PROCESS_INDICATOR, Verdict.ACCEPTABLE);

  /** A verdict with how many joints have it. */
  record Count(String verdict, String text) {}

  private Verdicts() {}

  static String headline(ScoredPhoto scored, Messages words) {
    if (scored.joints().isEmpty()) {
      return words.get("headline.no-row");
    }
    if (scored.verdict() == Verdict.DEFECT) {
      return words.counted("headline.defect", count(scored, Verdict.DEFECT));
    }
    return words.get("headline." + scored.verdict().id());
  }

  static List<Count> counts(ScoredPhoto scored, Messages words) {
    List<Count> counts = new ArrayList<>();
    for (Verdict verdict : WORST_FIRST) {
      int count = count(scored, verdict);
      if (count > 0) {
        String key = "count." + verdict.id();
        counts.add(
            new Count(
                verdict.id(),
                verdict == Verdict.DEFECT ? words.counted(key, count) : words.get(key, count)));
      }
    }
    return counts;
  }

  static int count(ScoredPhoto scored, Verdict verdict) {
    return (int) scored.joints().stream().filter(joint -> joint.verdict() == verdict).count();
  }

  /** Why a joint is not judged, part by part, in the page's language where it is known. */
  static List<String> doubts(GradedJoint joint, Messages words) {
    return joint
        .unjudgedBecause()
        .map(why -> List.of(why.split("; (?=possibly )")))
        .orElse(List.of())
        .stream()
        .map(part -> doubt(part, words))
        .toList();
  }

  private static String doubt(String part, Messages words) {
    Matcher possibly = POSSIBLY.matcher(part);
    if (!possibly.matches()) {
      return words.data(part);
    }
    String kind =
        possibly.group(1) == null
            ? words.get("kind." + possibly.group(2))
            : words.get("doubt.bridge", possibly.group(1));
    String chance = words.percent(Integer.parseInt(possibly.group(3)) / 100.0);
    String said = words.get("doubt.possibly", kind, chance);
    return possibly.group(4) == null ? said : said + ": " + sentences(possibly.group(4), words);
  }

  /** Sentences of a data file that are joined by semicolons. */
  static String sentences(String english, Messages words) {
    String whole = words.data(english);
    return whole.equals(english)
        ? List.of(english.split("; ")).stream().map(words::data).collect(Collectors.joining("; "))
        : whole;
  }
}
