package leadlight.page.words;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Verdict;
import leadlight.record.said.BenchResult;
import leadlight.record.said.LegsSeen;
import leadlight.record.scoring.Subject;
import leadlight.text.Messages;
import leadlight.text.VerdictWords;

/** What stands in a record, in words that a board's timeline and the bench page share. */
public final class RecordWords {

  private RecordWords() {}

  /** "after rework", or "after rework 2, port A". */
  public static String stage(Messages words, Subject subject) {
    String name = words.get("stage." + subject.stage().id());
    String when = subject.attempt() == 1 ? name : words.get("stage.again", name, subject.attempt());
    return subject.port().map(port -> when + ", " + of(port)).orElse(when);
  }

  /** "board 1" of a board that has a mere number for a name; any other name as it is. */
  public static String board(Messages words, String name) {
    return Subject.isNumber(name) ? words.get("board.numbered", name) : name;
  }

  /** What a prod or a meter said, with the meter's other pin. */
  public static String said(Messages words, BenchResult result) {
    String said = words.get("bench." + result.test().id() + "." + result.result());
    return result.otherPin().isPresent()
        ? said + " " + words.get("bench.to", result.otherPin().getAsInt())
        : said;
  }

  /** "solder side, a.jpg" and the legs by verdict, the worst first. */
  public static List<String> legs(Messages words, LegsSeen seen) {
    List<String> lines = new ArrayList<>();
    lines.add(words.get("legs.side." + seen.side(), of(seen.photo())));
    for (Verdict verdict : Verdict.WORST_FIRST) {
      List<String> numbers = seen.numbers(verdict);
      if (!numbers.isEmpty()) {
        lines.add(VerdictWords.of(verdict, words) + ": " + String.join(", ", numbers));
      }
    }
    if (seen.legs().isEmpty()) {
      lines.add(words.get("verdict.unjudged"));
    }
    return lines;
  }

  /** A person's own words, safe to show. */
  public static String of(String person) {
    return SafeText.of(person);
  }
}
