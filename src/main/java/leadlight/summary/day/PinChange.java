package leadlight.summary.day;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.record.said.RecordedJoint;
import leadlight.text.Messages;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * What became of one pin from one stage to the next.
 *
 * @param pin its number
 * @param before what it was
 * @param after what it is
 * @param kind what that means
 */
public record PinChange(int pin, State before, State after, Kind kind) {

  /** What a change means. */
  public enum Kind {
    /** A defect that is one no more. */
    MENDED,
    /** A defect where none was. */
    NEW,
    /** A defect before and after. */
    STILL,
    /** Judged only once: nothing can be said. */
    UNKNOWN,
    /** No defect, before or after. */
    SOUND;

    /** One word for a picture; empty if there is nothing to say. */
    public String word(Messages words) {
      return this == SOUND ? "" : words.get("change.word." + name().toLowerCase(Locale.ROOT));
    }
  }

  /**
   * What a pin was at one stage.
   *
   * @param verdict the verdict that counts
   * @param defects what is wrong; empty if nothing is or if nobody named it
   */
  record State(Verdict verdict, List<Defect> defects) {

    /** Copies the list. */
    public State {
      defects = List.copyOf(defects);
    }

    static State of(RecordedJoint joint) {
      Stream<Finding> findings =
          joint.verdict() == Verdict.DEFECT
              ? Sentences.spoken(joint.standing().joint().findings()).stream()
              : Stream.empty();
      return new State(
          joint.verdict(),
          findings
              .filter(finding -> finding.verdict() == Verdict.DEFECT)
              .map(
                  finding ->
                      new Defect(
                          finding.kind(), finding.pins().size() > 1 ? finding.pins().get(1) : 0))
              .distinct()
              .sorted()
              .toList());
    }

    /** For tables: ids, as "not judged", "bridge to 5 and open". */
    String text() {
      if (defects.isEmpty()) {
        return VerdictWords.plain(verdict);
      }
      return String.join(" and ", defects.stream().map(Defect::text).toList());
    }

    /** For people; the pins of a bridge stand together in the line already. */
    String words(Messages words) {
      if (defects.isEmpty()) {
        return VerdictWords.of(verdict, words);
      }
      return defects.stream()
          .map(defect -> words.get("kind." + defect.kind().id()))
          .distinct()
          .reduce((a, b) -> words.get("list.and", a, b))
          .orElseThrow();
    }
  }

  /**
   * A defect.
   *
   * @param neighbourPin the other pin of a bridge, else 0
   */
  record Defect(FindingKind kind, int neighbourPin) implements Comparable<Defect> {

    String text() {
      return kind.id().replace('-', ' ') + (neighbourPin > 0 ? " to " + neighbourPin : "");
    }

    @Override
    public int compareTo(Defect other) {
      return text().compareTo(other.text());
    }
  }

  static PinChange of(RecordedJoint before, RecordedJoint after) {
    return new PinChange(
        before.pin(), State.of(before), State.of(after), kind(before.verdict(), after.verdict()));
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
}
