package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
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
}
