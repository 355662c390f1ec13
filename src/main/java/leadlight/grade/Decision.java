package leadlight.grade;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * From which chance on a fault counts as seen, and from which as possible: {@code
 * models/grade/decision.json}.
 *
 * @param seenFrom chance from which a finding is stated
 * @param doubtFrom chance by the measures alone from which the joint is not called sound
 * @param doubtFromWithReader the same where the second reader was asked: its chances are the
 *     sharper ones, so that less of a doubt counts
 * @param witnessShare share of a row's joints that must show a fillet before the lack of one counts
 */
record Decision(
    @JsonProperty(required = true) Figure seenFrom,
    @JsonProperty(required = true) Figure doubtFrom,
    @JsonProperty(required = true) Figure doubtFromWithReader,
    @JsonProperty(required = true) Figure witnessShare) {

  static Decision builtIn() {
    return DataFile.builtIn("grade/decision.json").read(Decision.class);
  }

  /**
   * Chance from which a joint is not called sound.
   *
   * @param read whether the second reader's opinion is in the chance
   */
  double doubtFrom(boolean read) {
    return (read ? doubtFromWithReader : doubtFrom).value();
  }
}
