package leadlight.joint.judge;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;
import leadlight.data.Figure;

/**
 * What a joint's picture must give before it is judged: {@code models/joint/fitness.json}.
 *
 * @param fineFromPitchPx pixels a pitch from which fillets are judged
 * @param coarseFromPitchPx pixels a pitch below which nothing is
 * @param fineToBlurPitch edge sigma, in pitches, up to which fillets are judged
 * @param blurPitchPxMost pixels a pitch beyond which edges are measured on the halved picture
 * @param shareOfBlurDoubted standard uncertainty of an edge sigma, as a share of it
 * @param blurSpreadTo a joint's edge sigma over its neighbours' up to which the meter's own spread
 *     explains it
 * @param burntLevel level from which a pixel counts as burnt out
 * @param burntPlay levels to either side within which a pixel may or may not be burnt out
 * @param burntMost burnt-out share of a joint above which it is not visible
 * @param coveredFrom strangeness of a gap along its whole length from which it counts as covered
 */
public record FitnessLimits(
    @JsonProperty(required = true) Figure fineFromPitchPx,
    @JsonProperty(required = true) Figure coarseFromPitchPx,
    @JsonProperty(required = true) Figure fineToBlurPitch,
    @JsonProperty(required = true) Figure blurPitchPxMost,
    @JsonProperty(required = true) Figure shareOfBlurDoubted,
    @JsonProperty(required = true) Figure blurSpreadTo,
    @JsonProperty(required = true) Figure burntLevel,
    @JsonProperty(required = true) Figure burntPlay,
    @JsonProperty(required = true) Figure burntMost,
    @JsonProperty(required = true) Figure coveredFrom) {

  public static FitnessLimits builtIn() {
    return DataFile.builtIn("joint/fitness.json").read(FitnessLimits.class);
  }
}
