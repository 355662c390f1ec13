package leadlight.joint.place;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.Scorecard;
import leadlight.joint.cut.Signals;

/**
 * A number that follows from signals: small regression trees added up (Friedman 2001, Greedy
 * function approximation, Annals of Statistics 29(5)).
 *
 * @param states what number, as "toe as found less true toe, along the row, pitches"
 * @param intercept the number before any tree
 * @param signals names of the signals that the trees look at
 * @param trees the trees
 */
record Trend(
    @JsonProperty(required = true) String states,
    @JsonProperty(required = true) double intercept,
    @JsonProperty(required = true) List<String> signals,
    @JsonProperty(required = true) List<Scorecard.Tree> trees) {

  Trend {
    for (Scorecard.Tree tree : trees) {
      tree.check(signals.size());
    }
  }

  double of(Signals given) {
    double[] values = signals.stream().mapToDouble(given::get).toArray();
    double sum = intercept;
    for (Scorecard.Tree tree : trees) {
      sum += tree.points(values);
    }
    return sum;
  }
}
