package leadlight.leg.measure;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;
import leadlight.data.Scorecard;

/**
 * The fitted judgement data of {@code models/legs/judgement.json}, made by {@code
 * models/legs/fit.py}.
 *
 * @param source how and on what it was fitted
 * @param wetted does solder meet the leg in a sector
 * @param covered does solder cover a cell of the ring of copper
 * @param leastDeg standard uncertainty of the wetted part where every sector is sure, degrees
 * @param leastShare the same of the covered share
 * @param leastLandPx length of a land from which legs are judged
 * @param hiddenTo match of a land's outline up to which it hardly shows
 */
public record LegJudgement(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Scorecard wetted,
    @JsonProperty(required = true) Scorecard covered,
    @JsonProperty(required = true) Figure leastDeg,
    @JsonProperty(required = true) Figure leastShare,
    @JsonProperty(required = true) Figure leastLandPx,
    @JsonProperty(required = true) Figure hiddenTo) {

  public static LegJudgement builtIn() {
    return DataFile.builtIn("legs/judgement.json").read(LegJudgement.class);
  }
}
