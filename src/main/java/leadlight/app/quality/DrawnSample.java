package leadlight.app.quality;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Optional;
import leadlight.quality.sampling.DoublePlan;
import leadlight.quality.sampling.Inspection;
import leadlight.quality.sampling.Plan;
import leadlight.quality.sampling.SequentialPlan;

/**
 * A sample as drawn, kept beside its work sheet: {@code plan.json}.
 *
 * @param lot units in the lot
 * @param seed of the draw
 * @param size units to inspect, at most
 * @param accept most nonconforming with which the lot is accepted; of all units drawn
 * @param refuse fewest with which it is refused; of all units drawn
 * @param why where the plan comes from
 * @param twoSamples the plan, if it is a double one
 * @param sequential the plan, if it is a sequential one
 * @param items the units, in the order of the sheet
 */
public record DrawnSample(
    @JsonProperty(required = true) int lot,
    @JsonProperty(required = true) long seed,
    @JsonProperty(required = true) int size,
    @JsonProperty(required = true) int accept,
    @JsonProperty(required = true) int refuse,
    @JsonProperty(required = true) String why,
    Optional<DoublePlan> twoSamples,
    Optional<SequentialPlan> sequential,
    @JsonProperty(required = true) List<String> items) {

  /** Older files have single plans only; the size must be that of the list and of the plan. */
  public DrawnSample {
    twoSamples = twoSamples == null ? Optional.empty() : twoSamples;
    sequential = sequential == null ? Optional.empty() : sequential;
    items = List.copyOf(items);
    int units =
        twoSamples
            .map(DoublePlan::units)
            .orElse(sequential.map(SequentialPlan::units).orElse(size));
    if (units != size || items.size() != size) {
      throw new IllegalArgumentException(
          "the plan is for %d units, the size is %d, items lists %d"
              .formatted(units, size, items.size()));
    }
  }

  public static DrawnSample of(int lot, long seed, Inspection plan, List<String> items) {
    if (plan instanceof Plan one) {
      return with(lot, seed, one, Optional.empty(), Optional.empty(), items);
    }
    if (plan instanceof DoublePlan two) {
      int accept = two.acceptBoth();
      Plan whole = new Plan(two.units(), accept, accept + 1, two.why());
      return with(lot, seed, whole, Optional.of(two), Optional.empty(), items);
    }
    SequentialPlan each = (SequentialPlan) plan;
    int accept = each.acceptAt(each.end());
    Plan whole = new Plan(each.units(), accept, accept + 1, each.why());
    return with(lot, seed, whole, Optional.empty(), Optional.of(each), items);
  }

  private static DrawnSample with(
      int lot,
      long seed,
      Plan whole,
      Optional<DoublePlan> two,
      Optional<SequentialPlan> each,
      List<String> items) {
    return new DrawnSample(
        lot, seed, whole.size(), whole.accept(), whole.refuse(), whole.why(), two, each, items);
  }

  public Inspection plan() {
    return twoSamples
        .<Inspection>map(plan -> plan)
        .or(() -> sequential)
        .orElseGet(() -> new Plan(size, accept, refuse, why));
  }
}
