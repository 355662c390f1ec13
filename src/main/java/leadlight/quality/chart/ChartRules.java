package leadlight.quality.chart;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import leadlight.data.DataFile;

/**
 * Designs of charts and what they are worth: {@code models/quality/run-rules.json}.
 *
 * @param source of the run lengths
 * @param groupsToFalseAlarm groups on average until a chart in control gives a signal, by rules
 * @param leastPerGroup fewer expected in a group break the limits' promise
 * @param leastPerGroupSource where from
 * @param fewGroups fewer groups leave the limits unsure
 * @param fewGroupsSource where from
 * @param fewGaps fewer gaps between rare events leave their limits unsure
 * @param fewGapsSource where from
 * @param overdispersedP groups differ more than chance below this significance
 * @param overdispersedSource where from
 * @param cusum the cumulative sum chart
 * @param ewma the moving average chart
 */
public record ChartRules(
    @JsonProperty(required = true) String source,
    @JsonProperty(required = true) Map<String, Double> groupsToFalseAlarm,
    @JsonProperty(required = true) int leastPerGroup,
    @JsonProperty(required = true) String leastPerGroupSource,
    @JsonProperty(required = true) int fewGroups,
    @JsonProperty(required = true) String fewGroupsSource,
    @JsonProperty(required = true) int fewGaps,
    @JsonProperty(required = true) String fewGapsSource,
    @JsonProperty(required = true) double overdispersedP,
    @JsonProperty(required = true) String overdispersedSource,
    @JsonProperty(required = true) Cusum cusum,
    @JsonProperty(required = true) Ewma ewma) {

  /**
   * A cumulative sum chart of standardised groups (Page 1954).
   *
   * @param allowance k, in standard deviations
   * @param decision h, likewise
   * @param runLength groups on average to a false alarm
   */
  public record Cusum(
      @JsonProperty(required = true) double allowance,
      @JsonProperty(required = true) double decision,
      @JsonProperty(required = true) int runLength,
      @JsonProperty(required = true) String source) {}

  /**
   * An exponentially weighted moving average of standardised groups (Roberts 1959).
   *
   * @param weight lambda, of the newest group
   * @param width L, in standard deviations of the average
   * @param runLength groups on average to a false alarm
   */
  public record Ewma(
      @JsonProperty(required = true) double weight,
      @JsonProperty(required = true) double width,
      @JsonProperty(required = true) int runLength,
      @JsonProperty(required = true) String source) {}

  /** The rules that the program carries. */
  public static ChartRules builtIn() {
    return DataFile.builtIn("quality/run-rules.json").read(ChartRules.class);
  }
}
