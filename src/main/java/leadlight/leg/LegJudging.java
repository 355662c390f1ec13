package leadlight.leg;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * When a leg can be judged at all: {@code models/legs/judging.json}.
 *
 * @param leastLandPx length of a land from which legs are judged
 * @param hiddenTo match of a land's outline up to which it hardly shows
 * @param componentFrom mean chance of the component side from which a photo is not taken for one of
 *     the solder side
 * @param burntFrom share of a land that is burnt out from which it shows too little
 */
record LegJudging(
    @JsonProperty(required = true) Figure leastLandPx,
    @JsonProperty(required = true) Figure hiddenTo,
    @JsonProperty(required = true) Figure componentFrom,
    @JsonProperty(required = true) Figure burntFrom) {

  static LegJudging builtIn() {
    return DataFile.builtIn("legs/judging.json").read(LegJudging.class);
  }
}
