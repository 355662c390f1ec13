package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import leadlight.data.Basis;

/**
 * A row of lands.
 *
 * @param id name within the connector, as "front"
 * @param xMm middle of the row, in the connector's frame
 * @param yMm middle of the row
 * @param openEnd where the leads' open ends point, in the connector's frame
 * @param pin1 at which end pin 1 is when this row is held with the body above its leads
 * @param underBody true if the body hides the row from above
 * @param lands the lands
 * @param lead the metal on them, where known
 * @param basis what places and lands rest on
 */
public record ConnectorRow(
    @JsonProperty(required = true) String id,
    @JsonProperty(required = true) double xMm,
    @JsonProperty(required = true) double yMm,
    @JsonProperty(required = true) OpenEnd openEnd,
    @JsonProperty(value = "pin_1", required = true) End pin1,
    boolean underBody,
    @JsonProperty(required = true) Lands lands,
    Optional<LeadShape> lead,
    @JsonProperty(required = true) Basis basis) {

  /** Refuses places that are not on a board. */
  public ConnectorRow {
    Mm.within("x_mm", xMm, -1000, 1000);
    Mm.within("y_mm", yMm, -1000, 1000);
  }

  /** Where the leads' open ends point. */
  public enum OpenEnd {
    DOWN,
    LEFT,
    UP,
    RIGHT
  }

  /** An end of a row. */
  public enum End {
    LEFT,
    RIGHT
  }
}
