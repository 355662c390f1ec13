package leadlight.drill.pool;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.text.LengthUnit;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/**
 * What Leadlight says of a joint, kept until the trainee has spoken.
 *
 * @param verdict its verdict
 * @param remarks its findings
 * @param unjudgedBecause why it does not judge, if so
 */
public record ToolSaid(
    @JsonProperty(required = true) Verdict verdict,
    List<Remark> remarks,
    Optional<String> unjudgedBecause) {

  /**
   * A finding.
   *
   * @param pins the pins that it concerns
   * @param percent how sure
   * @param share of states that exclude each other, which share that: the part that falls to this
   *     one
   * @param because what in the photo speaks for it
   * @param clause the rule
   * @param settleBy how to settle it
   */
  public record Remark(
      @JsonProperty(required = true) FindingKind kind,
      List<Integer> pins,
      int percent,
      OptionalDouble share,
      List<String> because,
      String clause,
      String settleBy) {

    /** Fills in what a file leaves out because it is empty. */
    public Remark {
      share = share == null ? OptionalDouble.empty() : share;
      pins = pins == null ? List.of() : List.copyOf(pins);
      because = because == null ? List.of() : List.copyOf(because);
      clause = clause == null ? "" : clause;
      settleBy = settleBy == null ? "" : settleBy;
    }
  }

  /** Fills in what a file leaves out because it is empty. */
  public ToolSaid {
    remarks = remarks == null ? List.of() : List.copyOf(remarks);
  }

  /**
   * What it says of a joint.
   *
   * @param limits id of the built-in limits, whose rules other languages have by it; a user's own
   *     keep their words: then empty
   * @param words the language that is spoken
   */
  public static ToolSaid of(GradedJoint joint, String limits, Messages words) {
    Sentences sentences = new Sentences(words, LengthUnit.MM);
    return new ToolSaid(
        joint.verdict(),
        Sentences.spoken(joint.findings()).stream()
            .map(
                f ->
                    new Remark(
                        f.kind(),
                        f.pins(),
                        (int) Math.floor(100 * f.probability()),
                        f.share(),
                        sentences.because(f),
                        words.data("limits." + limits + ".rule." + f.kind().id(), f.clause()),
                        sentences.settle(f)))
            .toList(),
        joint.doubts().isEmpty()
            ? Optional.empty()
            : Optional.of(sentences.joined(joint.doubts())));
  }

  public List<FindingKind> kinds() {
    return remarks.stream().map(Remark::kind).distinct().toList();
  }
}
