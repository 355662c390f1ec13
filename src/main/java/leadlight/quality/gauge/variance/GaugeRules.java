package leadlight.quality.gauge.variance;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.Basis;
import leadlight.data.DataFile;

/**
 * Constants of gauge studies: {@code models/quality/gauge.json}.
 *
 * @param basis where they come from
 * @param k1ByTrials mean range to standard deviation of repeats, for 2, 3, ... trials
 * @param k2ByOperators range of operators' means to standard deviation, for 2, 3, ... operators
 * @param k3ByParts range of parts' means to standard deviation, for 2, 3, ... parts
 * @param poolAboveP an interaction less significant than this is pooled with the repeats
 * @param grrAcceptable up to this share of the total variation the gauge is good
 * @param grrMarginal up to this share it may do
 * @param leastCategories distinct categories that a gauge should tell
 */
public record GaugeRules(
    @JsonProperty(required = true) Basis basis,
    @JsonProperty(required = true) List<Double> k1ByTrials,
    @JsonProperty(required = true) List<Double> k2ByOperators,
    @JsonProperty(required = true) List<Double> k3ByParts,
    @JsonProperty(required = true) double poolAboveP,
    @JsonProperty(required = true) double grrAcceptable,
    @JsonProperty(required = true) double grrMarginal,
    @JsonProperty(required = true) int leastCategories) {

  public static GaugeRules builtIn() {
    return DataFile.builtIn("quality/gauge.json").read(GaugeRules.class);
  }

  /** "good", "marginal" or "poor" of a share of the total variation. */
  public String verdict(double share) {
    if (share <= grrAcceptable) {
      return "good";
    }
    return share <= grrMarginal ? "marginal" : "poor";
  }
}
