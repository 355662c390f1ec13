package leadlight.summary;

import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.record.RecordedJoint;

/**
 * What became of one pin from one stage to the next.
 *
 * @param pin its number
 * @param before verdict or findings before
 * @param after verdict or findings after
 * @param kind what that means
 */
public record PinChange(int pin, String before, String after, Kind kind) {

  /** What a change means. */
  public enum Kind {
    /** A defect that is one no more. */
    MENDED("mended"),
    /** A defect where none was. */
    NEW("new"),
    /** A defect before and after. */
    STILL("still"),
    /** Judged only once: nothing can be said. */
    UNKNOWN("?"),
    /** No defect, before or after. */
    SOUND("");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** One word for a picture; empty if there is nothing to say. */
    public String word() {
      return word;
    }
  }

  static PinChange of(RecordedJoint before, RecordedJoint after) {
    return new PinChange(
        before.pin(), words(before), words(after), kind(before.verdict(), after.verdict()));
  }

  private static Kind kind(Verdict before, Verdict after) {
    if (before == Verdict.UNJUDGED || after == Verdict.UNJUDGED) {
      return after == Verdict.DEFECT || before == Verdict.DEFECT || before != after
          ? Kind.UNKNOWN
          : Kind.SOUND;
    }
    if (after == Verdict.DEFECT) {
      return before == Verdict.DEFECT ? Kind.STILL : Kind.NEW;
    }
    return before == Verdict.DEFECT ? Kind.MENDED : Kind.SOUND;
  }

  private static String words(RecordedJoint joint) {
    if (!joint.overrules().isEmpty() || joint.verdict() != Verdict.DEFECT) {
      return joint.verdict() == Verdict.UNJUDGED
          ? "not judged"
          : joint.verdict().id().replace('-', ' ');
    }
    return joint.tool().findings().stream()
        .filter(finding -> finding.verdict() == Verdict.DEFECT)
        .map(
            finding ->
                finding.kind().id().replace('-', ' ')
                    + (finding.pins().size() > 1 ? " to " + finding.pins().get(1) : ""))
        .distinct()
        .sorted()
        .collect(Collectors.joining(" and "));
  }
}
