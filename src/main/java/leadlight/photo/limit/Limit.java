package leadlight.photo.limit;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * A figure and where it comes from.
 *
 * @param value the figure, above 0; its unit is in the name of the field that holds it
 * @param source where the figure comes from
 */
public record Limit(
    @JsonProperty(required = true) double value, @JsonProperty(required = true) String source) {

  public Limit {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException("value must be above 0, is " + value);
    }
    if (source == null || source.isBlank()) {
      throw new IllegalArgumentException("source must say where the value comes from");
    }
  }
}
