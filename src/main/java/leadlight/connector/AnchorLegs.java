package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Comparator;
import java.util.List;
import leadlight.data.Basis;

/**
 * The anchor legs of a connector.
 *
 * @param each the legs
 * @param basis what their places and sizes rest on
 */
public record AnchorLegs(
    @JsonProperty(required = true) List<Leg> each, @JsonProperty(required = true) Basis basis) {

  /** Copies the list; refuses an empty one. */
  public AnchorLegs {
    each = Copies.list(each);
    if (each.isEmpty()) {
      throw new IllegalArgumentException("legs must be left out where there are none");
    }
  }

  /**
   * The legs in plated holes by their numbers, seen from the component side with the leads above:
   * the connector's own frame has the body above, so it is turned half round here. Empty if there
   * are only tabs.
   */
  public List<Leg> numbered() {
    return each.stream()
        .filter(leg -> leg.opening().isPresent() && leg.from() == Leg.Origin.MIDDLE)
        .sorted(
            Comparator.comparingDouble((Leg leg) -> -Math.rint(leg.yMm()))
                .thenComparingDouble(leg -> -leg.xMm()))
        .map(
            leg ->
                new Leg(
                    leg.name(),
                    leg.kind(),
                    leg.from(),
                    -leg.xMm(),
                    -leg.yMm(),
                    leg.land(),
                    leg.opening()))
        .toList();
  }
}
