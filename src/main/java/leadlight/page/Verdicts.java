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

  /** What each opinion says by itself stands in a table of its own: {@link OpinionsView}. */
  private static final Pattern POSSIBLY =
      Pattern.compile(
          "possibly (?:bridge to pin (?<pin>\\d+)|(?<kind>[a-z-]+)) \\(chance (?<chance>\\d+) %"
              + "(?:; measures \\d+ %, second reader \\d+ %)?\\)"
              + "(?:: (?<how>.*))?");

  private static final Pattern OPINIONS =
      Pattern.compile(" \\(measures \\d+ %, second reader \\d+ %\\)");

  /** Where one doubt ends and the next begins; most of them have semicolons of their own. */
  private static final Pattern NEXT =
      Pattern.compile(
          "(?<=microscope and prod the lead); "
              + "|; (?=possibly |no fillet shows here|side-overhang -?\\d)");

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
    return joint.unjudgedBecause().map(why -> List.of(NEXT.split(why))).orElse(List.of()).stream()
        .map(part -> doubt(part, words))
        .toList();
  }

  private static String doubt(String part, Messages words) {
    Matcher possibly = POSSIBLY.matcher(part);
    if (!possibly.matches()) {
      return words.data(OPINIONS.matcher(part).replaceFirst(""));
    }
    String kind =
        possibly.group("pin") == null
            ? words.get("kind." + possibly.group("kind"))
            : words.get("doubt.bridge", possibly.group("pin"));
    String chance = words.get("number.percent", possibly.group("chance"));
    String said = words.get("doubt.possibly", kind, chance);
    String how = possibly.group("how");
    return how == null ? said : said + ": " + sentences(how, words);
  }

  /** Sentences of a data file that are joined by semicolons. */
  static String sentences(String english, Messages words) {
    String whole = words.data(english);
    return whole.equals(english)
        ? List.of(english.split("; ")).stream().map(words::data).collect(Collectors.joining("; "))
        : whole;
  }
}
