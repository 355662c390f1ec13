package leadlight.joint.judge;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Scorecard;

/**
 * The fitted judgement data of {@code models/joint/judgement.json}.
 *
 * @param source how and on what it was fitted
 * @param unwetted is there no fillet between toe and land
 * @param openNotStarved if so: is the lead open rather than starved
 * @param missing is the lead missing
 * @param excess does solder hide the lead
 * @param bridge does metal span the gap
 * @param unfamiliar is the photo of a make on which telling soldered from set down was never shown
 *     to work
 */
public record Judgement(
    @JsonProperty(required = true) List<String> source,
    @JsonProperty(required = true) Scorecard unwetted,
    @JsonProperty(required = true) Scorecard openNotStarved,
    @JsonProperty(required = true) Scorecard missing,
    @JsonProperty(required = true) Scorecard excess,
    @JsonProperty(required = true) Scorecard bridge,
    @JsonProperty(required = true) Scorecard unfamiliar) {

  public static Judgement builtIn() {
    return DataFile.builtIn("joint/judgement.json").read(Judgement.class);
  }
}
