package leadlight.data;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;

/**
 * What a figure rests on.
 *
 * @param source document with its revision or version
 * @param clause table, clause or section in it, if known
 * @param provenance how the figure got from there to here
 * @param note what a reader must know beside it, if anything
 */
public record Basis(
    @JsonProperty(required = true) String source,
    Optional<String> clause,
    @JsonProperty(required = true) Provenance provenance,
    Optional<String> note) {

  /** Refuses an empty source. */
  public Basis {
    if (source == null || source.isBlank()) {
      throw new IllegalArgumentException("source must name a document, is empty");
    }
    if (provenance == null) {
      throw new IllegalArgumentException("provenance must not be null");
    }
  }

  /** For people: "IPC-A-610J, Table 8-5 (from memory)". */
  public String words() {
    return source + clause.map(c -> ", " + c).orElse("") + " (" + provenance.words() + ")";
  }
}
