package leadlight.quality.agreement;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;

/**
 * When graders are good enough: {@code models/quality/agreement.json}.
 *
 * @param effectiveness least share of items judged right
 * @param miss most share of bad items called good
 * @param falseAlarm most share of good items called bad
 * @param kappa least chance-corrected agreement
 */
record AgreementLimits(
    @JsonProperty(required = true) Step effectiveness,
    @JsonProperty(required = true) Step miss,
    @JsonProperty(required = true) Step falseAlarm,
    @JsonProperty(required = true) Step kappa) {

  /**
   * Two bounds.
   *
   * @param acceptable up to (or from) here it is acceptable
   * @param marginal up to (or from) here it may do
   * @param source where they come from
   */
  record Step(
      @JsonProperty(required = true) double acceptable,
      @JsonProperty(required = true) double marginal,
      @JsonProperty(required = true) String source) {

    /** "acceptable", "marginal" or "unacceptable" of a figure; which way is better is told. */
    String verdict(double value) {
      boolean low = acceptable < marginal;
      if (low ? value <= acceptable : value >= acceptable) {
        return "acceptable";
      }
      return (low ? value <= marginal : value >= marginal) ? "marginal" : "unacceptable";
    }
  }

  static AgreementLimits builtIn() {
    return DataFile.builtIn("quality/agreement.json").read(AgreementLimits.class);
  }
}
