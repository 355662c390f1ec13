package leadlight.data;

import com.fasterxml.jackson.annotation.JsonProperty;

/**
 * A threshold and where it comes from.
 *
 * @param value the number
 * @param source a publication, a fit with what it was fitted on, or "common practice, no source"
 */
public record Figure(
    @JsonProperty(required = true) double value, @JsonProperty(required = true) String source) {}
