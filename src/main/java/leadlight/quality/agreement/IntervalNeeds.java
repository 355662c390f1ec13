package leadlight.quality.agreement;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;

/**
 * What an interval of a coefficient of agreement needs to hold what it says: {@code
 * models/quality/agreement-intervals.json}.
 *
 * @param leastDivided items on which grades differ
 * @param leastRare items called other than the commonest category by more than half of their grades
 * @param leastClusters photos, boards or single items
 * @param source where the counts come from
 */
record IntervalNeeds(
    @JsonProperty(required = true) int leastDivided,
    @JsonProperty(required = true) int leastRare,
    @JsonProperty(required = true) int leastClusters,
    @JsonProperty(required = true) String source) {

  static final IntervalNeeds BUILT_IN =
      DataFile.builtIn("quality/agreement-intervals.json").read(IntervalNeeds.class);
}
