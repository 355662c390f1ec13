package leadlight.page.words;

import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.result.LegSet;
import leadlight.report.words.PictureWords;
import leadlight.text.Messages;

/** Anchor legs by name, and what is to be done at them. */
public final class LegNames {

  private LegNames() {}

  /** "Leg 2", or that photos do not tell which. */
  public static String of(LegSet.Joined leg, Messages words) {
    return new PictureWords(words).leg(leg);
  }

  /** All legs that have a verdict: "Leg 1, Leg 3", or how many where none has a number. */
  public static String of(LegSet legs, Verdict verdict, Messages words) {
    List<LegSet.Joined> those =
        legs.legs().stream().filter(leg -> leg.verdict() == verdict).toList();
    return those.stream().allMatch(leg -> leg.number().isPresent())
        ? those.stream().map(leg -> of(leg, words)).collect(Collectors.joining(", "))
        : words.counted("legs.count", those.size());
  }

  /** What to do at faulty legs; empty if there are none. */
  public static String todo(LegSet legs, Messages words) {
    String faulty = of(legs, Verdict.DEFECT, words);
    return faulty.isEmpty() ? "" : words.get("legs.todo", faulty);
  }
}
