package leadlight.cli;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.quality.Plan;

/**
 * A sample as drawn, kept beside its work sheet: {@code plan.json}.
 *
 * @param lot units in the lot
 * @param seed of the draw
 * @param size units to inspect
 * @param accept most nonconforming with which the lot is accepted
 * @param refuse fewest with which it is refused
 * @param why where the plan comes from
 * @param items the units, in the order of the sheet
 */
record DrawnSample(
    @JsonProperty(required = true) int lot,
    @JsonProperty(required = true) long seed,
    @JsonProperty(required = true) int size,
    @JsonProperty(required = true) int accept,
    @JsonProperty(required = true) int refuse,
    @JsonProperty(required = true) String why,
    @JsonProperty(required = true) List<String> items) {

  static DrawnSample of(int lot, long seed, Plan plan, List<String> items) {
    return new DrawnSample(lot, seed, plan.size(), plan.accept(), plan.refuse(), plan.why(), items);
  }

  Plan plan() {
    return new Plan(size, accept, refuse, why);
  }
}
