package leadlight.statistics;

import com.fasterxml.jackson.annotation.JsonProperty;
import leadlight.data.DataFile;

/**
 * How alike the units of a cluster are thought to be before any is seen: {@code
 * models/statistics/clusters.json}.
 *
 * @param priorLikeness intraclass correlation
 * @param priorWeight how many events of the data's own outweigh it
 * @param source where both come from
 */
record ClusterRules(
    @JsonProperty(required = true) double priorLikeness,
    @JsonProperty(required = true) double priorWeight,
    @JsonProperty(required = true) String source) {

  static final ClusterRules BUILT_IN =
      DataFile.builtIn("statistics/clusters.json").read(ClusterRules.class);
}
