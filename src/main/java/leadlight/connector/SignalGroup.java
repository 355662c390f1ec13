package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Map;
import leadlight.data.Basis;

/**
 * Pins that fail alike.
 *
 * @param id name within the connector
 * @param name for people
 * @param pins land names and the signal that each carries
 * @param open what an open joint does
 * @param shorted what a short does
 * @param basis what this rests on
 */
public record SignalGroup(
    @JsonProperty(required = true) String id,
    @JsonProperty(required = true) String name,
    @JsonProperty(required = true) Map<String, String> pins,
    @JsonProperty(required = true) String open,
    @JsonProperty(required = true) String shorted,
    @JsonProperty(required = true) Basis basis) {

  /** Copies the map and keeps its order. */
  public SignalGroup {
    pins = Copies.map(pins);
  }
}
