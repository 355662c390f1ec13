package leadlight.page;

import leadlight.record.BenchResult;
import leadlight.record.Subject;
import leadlight.text.Messages;

/** What stands in a record, in words that a board's timeline and the bench page share. */
public final class RecordWords {

  private RecordWords() {}

  /** "after rework", or "after rework 2". */
  public static String stage(Messages words, Subject subject) {
    String name = words.get("stage." + subject.stage().id());
    return subject.attempt() == 1 ? name : words.get("stage.again", name, subject.attempt());
  }

  /** What a prod or a meter said, with the meter's other pin. */
  public static String said(Messages words, BenchResult result) {
    String said = words.get("bench." + result.test().id() + "." + result.result());
    return result.otherPin().isPresent()
        ? said + " " + words.get("bench.to", result.otherPin().getAsInt())
        : said;
  }

  /** A person's own words, safe to show. */
  public static String of(String person) {
    return SafeText.of(person);
  }
}
