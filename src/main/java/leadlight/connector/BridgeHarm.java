package leadlight.connector;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import leadlight.data.Basis;

/**
 * Two neighbours whose bridge does harm.
 *
 * @param pins the two land names
 * @param harm what it does
 * @param basis what this rests on
 */
public record BridgeHarm(
    @JsonProperty(required = true) List<String> pins,
    @JsonProperty(required = true) String harm,
    @JsonProperty(required = true) Basis basis) {

  /** Refuses anything but two pins. */
  public BridgeHarm {
    pins = Copies.list(pins);
    if (pins.size() != 2) {
      throw new IllegalArgumentException("a bridge joins two pins, not " + pins.size());
    }
  }

  boolean joins(String pin, String other) {
    return pins.contains(pin) && pins.contains(other) && !pin.equals(other);
  }
}
