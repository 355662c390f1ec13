package leadlight.life;

import com.fasterxml.jackson.annotation.JsonIgnoreProperties;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.report.strip.MarkedRow;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;

/**
 * What {@code leadlight legs} wrote of a photo, or {@code leadlight score --legs} of a connector,
 * taken into a board's life.
 *
 * @param schema which table it is
 * @param photo the photo
 * @param side the side of the board
 * @param legs the legs
 */
@JsonIgnoreProperties(ignoreUnknown = true)
public record LegsFile(
    @JsonProperty(required = true) String schema,
    @JsonProperty(required = true) Shown photo,
    @JsonProperty(required = true) String side,
    @JsonProperty(required = true) List<Leg> legs) {

  private static final String SCHEMA = "leadlight-legs-1";
  private static final String ENDING = ".legs.json";
  private static final String OF_CONNECTOR = ".connector.json";
  private static final int WIDTH_PX = 1200;
  private static final int QUALITY = 85;

  /** The photo. */
  record Shown(
      @JsonProperty(required = true) String file, @JsonProperty(required = true) String sha256) {}

  /** A leg. */
  @JsonIgnoreProperties(ignoreUnknown = true)
  record Leg(OptionalInt leg, @JsonProperty(required = true) Verdict verdict) {}

  /** Refuses another table. */
  public LegsFile {
    legs = List.copyOf(legs);
    if (!SCHEMA.equals(schema)) {
      throw new IllegalArgumentException("schema must be " + SCHEMA + ": leadlight legs writes it");
    }
  }

  /**
   * Reads the file; a copy of the marked picture beside it is kept, if it is of one photo.
   *
   * @throws UserError if it is none
   */
  public static LegsSeen seen(Path file, PhotoShelf shelf) {
    String name = file.getFileName().toString();
    if (name.endsWith(OF_CONNECTOR)) {
      return ConnectorLegsFile.seen(file);
    }
    LegsFile read = DataFile.at(file).read(LegsFile.class);
    Path picture = file.resolveSibling(name.replace(ENDING, ".legs.png"));
    Optional<Path> kept =
        name.endsWith(ENDING) && Files.isRegularFile(picture)
            ? Optional.of(shelf.keep(picture))
            : Optional.empty();
    return new LegsSeen(
        read.photo.file(),
        read.photo.sha256(),
        read.side,
        read.legs.stream().map(leg -> new LegsSeen.Leg(leg.leg(), leg.verdict())).toList(),
        Optional.empty(),
        kept.map(path -> path.getParent().getFileName() + "/" + path.getFileName()),
        Optional.empty());
  }

  /** The marked picture of an event, if it is still what it was. */
  public static Optional<MarkedRow.Picture> picture(PhotoShelf shelf, LifeEvent event) {
    return LegsSeen.of(event).picture().flatMap(kept -> shelf.picture(kept, LegsFile::shrunk));
  }

  private static MarkedRow.Picture shrunk(Frame frame) {
    double factor = Math.min(1, WIDTH_PX / (double) frame.widthPx());
    try (Frame small = frame.shrunk(factor);
        Canvas canvas = new Canvas(small.widthPx(), small.heightPx(), 0)) {
      canvas.paste(small, 0, 0, small.widthPx(), small.heightPx());
      return new MarkedRow.Picture(canvas.jpeg(QUALITY), small.widthPx(), small.heightPx());
    }
  }

  /**
   * The anchor legs in the report of a whole connector, as {@code leadlight score --legs} wrote it:
   * one answer a leg from photos of both sides.
   *
   * @param schema which table it is
   * @param legs photos and legs
   */
  @JsonIgnoreProperties(ignoreUnknown = true)
  private record ConnectorLegsFile(
      @JsonProperty(required = true) String schema, @JsonProperty(required = true) Legs legs) {

    private static final String SCHEMA = "leadlight-report";
    private static final String SOLDER = "solder";

    /** Refuses another table. */
    ConnectorLegsFile {
      if (!schema.startsWith(SCHEMA) || legs.photos.isEmpty()) {
        throw new IllegalArgumentException(
            "legs must be there: leadlight score --legs writes them");
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
          Optional.empty(),
          Optional.empty());
    }
  }
}
