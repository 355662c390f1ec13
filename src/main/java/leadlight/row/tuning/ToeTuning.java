package leadlight.row.tuning;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;

/**
 * Figures for locating lands, toes and heels. Distances with {@code Mm} are on the part, the others
 * in pitches.
 *
 * @param landEndWeights weights of {@code LandEndCues}
 * @param toeWeights weights of {@code ToeCues}
 * @param beyondZone how far beyond the periodic zone the lands may end
 * @param farthestMm longest land ahead of a toe
 * @param nearestMm shortest land ahead of a toe
 * @param aim spread of the places that the weights were fitted to, about the true ones
 * @param uLeast least uncertainty of a toe
 * @param spreadShare share of the spread of likely places beyond {@code aim} that is added to it
 * @param heelShare weakest change that counts as the heel, of the strongest
 * @param shortestFootMm shortest foot
 * @param longestFootMm longest foot
 * @param landBehindHeelMm usual land behind the heel
 */
public record ToeTuning(
    @JsonProperty(required = true) Map<String, Double> landEndWeights,
    @JsonProperty(required = true) Map<String, Double> toeWeights,
    @JsonProperty(required = true) double beyondZone,
    @JsonProperty(required = true) double farthestMm,
    @JsonProperty(required = true) double nearestMm,
    @JsonProperty(required = true) double aim,
    @JsonProperty(required = true) double uLeast,
    @JsonProperty(required = true) double spreadShare,
    @JsonProperty(required = true) double heelShare,
    @JsonProperty(required = true) double shortestFootMm,
    @JsonProperty(required = true) double longestFootMm,
    @JsonProperty(required = true) double landBehindHeelMm) {

  /** Copies the maps. */
  public ToeTuning {
    landEndWeights = Map.copyOf(landEndWeights);
    toeWeights = Map.copyOf(toeWeights);
  }
}
