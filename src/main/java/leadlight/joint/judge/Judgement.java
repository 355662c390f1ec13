package leadlight.joint.judge;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.data.DataFile;
import leadlight.data.Scorecard;
import leadlight.model.Question;

/**
 * The fitted judgement data of {@code models/joint/judgement.json}.
 *
 * @param source how and on what it was fitted
 * @param joint what answers a question from the joint's own signals
 * @param bridge does metal span the gap
 * @param unfamiliar is the photo of a make on which telling soldered from set down was never shown
 *     to work
 */
public record Judgement(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) Map<Question, Scorecard> joint,
    @JsonProperty(required = true) Scorecard bridge,
    @JsonProperty(required = true) Scorecard unfamiliar) {

  /** Copies the cards. */
  public Judgement {
    joint = Map.copyOf(joint);
  }

  /**
   * What answers a question.
   *
   * @throws IllegalStateException if it has no card
   */
  Scorecard card(Question question) {
    return Optional.ofNullable(joint.get(question))
        .orElseThrow(() -> new IllegalStateException("no card answers " + question.id()));
  }

  public static Judgement builtIn() {
    return DataFile.builtIn("joint/judgement.json").read(Judgement.class);
  }
}
