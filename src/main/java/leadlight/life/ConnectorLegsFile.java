package leadlight.life;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import leadlight.data.DataFile;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;

/**
 * The anchor legs in the report of a whole connector, as {@code leadlight score --legs} wrote it:
 * one answer a leg from photos of both sides.
 *
 * @param schema which table it is
 * @param legs photos and legs
 */
@JsonIgnoreProperties(ignoreUnknown = true)
record ConnectorLegsFile(
    @JsonProperty(required = true) String schema, @JsonProperty(required = true) Legs legs) {

  private static final String SCHEMA = "leadlight-report";
  private static final String SOLDER = "solder";

  /** Refuses another table. */
  ConnectorLegsFile {
    if (!schema.startsWith(SCHEMA) || legs.photos.isEmpty()) {
      throw new IllegalArgumentException("legs must be there: leadlight score --legs writes them");
    }
  }

  /** Photos and legs. */
  @JsonIgnoreProperties(ignoreUnknown = true)
  record Legs(
      @JsonProperty(required = true) List<Shown> photos,
      @JsonProperty(required = true) List<Leg> each) {}

  /** A photo. */
  @JsonIgnoreProperties(ignoreUnknown = true)
  record Shown(
      @JsonProperty(required = true) String file,
      @JsonProperty(required = true) String sha256,
      @JsonProperty(required = true) String side) {}

  /** A leg. */
  @JsonIgnoreProperties(ignoreUnknown = true)
  record Leg(OptionalInt leg, @JsonProperty(required = true) Verdict verdict) {}

  /** Which side decided: the solder side, where any photo shows it. */
  static LegsSeen seen(Path file) {
    ConnectorLegsFile read = DataFile.at(file).read(ConnectorLegsFile.class);
    List<Shown> photos = read.legs.photos;
    List<Shown> solder = photos.stream().filter(it -> it.side.equals(SOLDER)).toList();
    Shown first = solder.isEmpty() ? photos.get(0) : solder.get(0);
    return new LegsSeen(
        photos.stream().map(Shown::file).collect(Collectors.joining(", ")),
        first.sha256,
        first.side,
        read.legs.each.stream().map(leg -> new LegsSeen.Leg(leg.leg, leg.verdict)).toList(),
        Optional.empty(),
        Optional.empty());
  }
}
