package leadlight.row.tuning;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.numeric.LeastSquares;
import leadlight.numeric.Logistic;

/**
 * What tells the body's side from the leads' open side: measured on one side, as a difference of
 * the two sides, or as the weights of these differences in a logistic sum.
 *
 * @param near how unlike the gaps' colour the strip just beyond the leads is
 * @param far the same a pitch further out
 * @param beside how unlike the board beside the row's ends the strip beyond the leads is
 * @param step largest step across the gaps near the leads' ends, as at the body's edge
 * @param endWidth width of the metal at its end: the land at the open end, the lead at the body
 * @param innerWidth the same half a pitch further in
 * @param roughness how much brightness varies along the row beyond the leads
 * @param ripple the same right at their ends
 */
public record BodyCues(
    @JsonProperty(required = true) double near,
    @JsonProperty(required = true) double far,
    @JsonProperty(required = true) double beside,
    @JsonProperty(required = true) double step,
    @JsonProperty(required = true) double endWidth,
    @JsonProperty(required = true) double innerWidth,
    @JsonProperty(required = true) double roughness,
    @JsonProperty(required = true) double ripple) {

  double[] values() {
    return new double[] {near, far, beside, step, endWidth, innerWidth, roughness, ripple};
  }

  public BodyCues less(BodyCues other) {
    return new BodyCues(
        near - other.near,
        far - other.far,
        beside - other.beside,
        step - other.step,
        endWidth - other.endWidth,
        innerWidth - other.innerWidth,
        roughness - other.roughness,
        ripple - other.ripple);
  }

  /** Probability that the body lies on the upper side, for a difference upper less lower. */
  public double upper(BodyCues weights) {
    return Logistic.of(LeastSquares.dot(weights.values(), values()));
  }
}
