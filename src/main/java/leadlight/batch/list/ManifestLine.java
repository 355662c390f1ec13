package leadlight.batch.list;

import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.connector.RowRequest;
import leadlight.model.BoardSide;
import leadlight.model.BodySide;
import leadlight.model.UserError;
import leadlight.model.row.RowSpec;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;

/** One line of a manifest; errors name line and column. */
final class ManifestLine {

  private static final List<String> NEEDED = List.of("photo", "job");
  private static final List<String> KNOWN =
      List.of(
          "photo",
          "job",
          "board",
          "stage",
          "attempt",
          "connector",
          "row",
          "leads",
          "pitch_mm",
          "body",
          "class",
          "port",
          "legs");

  private final Path file;
  private final NamedCsvRecord line;
  private final Defaults defaults;

  ManifestLine(Path file, NamedCsvRecord line, Defaults defaults) {
    this.file = file;
    this.line = line;
    this.defaults = defaults;
  }

  static void checkHeader(Path file, List<String> header) {
    for (String name : NEEDED) {
      if (!header.contains(name)) {
        throw new UserError(
            "%s, line 1: no column \"%s\"; the first line names the columns: %s"
                .formatted(file, name, String.join(", ", KNOWN)));
      }
    }
    for (String name : header) {
      if (!KNOWN.contains(name)) {
        throw new UserError(
            "%s, line 1: unknown column \"%s\"; known are %s"
                .formatted(file, name, String.join(", ", KNOWN)));
      }
    }
  }

  JobPhoto read() {
    return new JobPhoto(
        photo(),
        new Subject(
            text("job").orElseThrow(() -> wrong("job", "is empty; name the job")),
            text("board").orElse(Subject.ONLY_BOARD),
            text("stage").map(this::stage).orElse(Stage.AS_RECEIVED),
            whole("attempt", 1, 9999).orElse(1),
            text("port")),
        row(),
        text("body").map(this::body).or(defaults::body),
        whole("class", 1, 3).orElse(defaults.productClass()),
        text("legs").map(this::legs));
  }

  private BoardSide legs(String side) {
    String connector = text("connector").or(() -> defaults.row().connector()).orElse("");
    if (connector.isEmpty() || connector.endsWith(".json")) {
      throw wrong(
          "legs",
          "needs a connector that Leadlight knows by its id; for another one use leadlight legs and"
              + " record note --legs-report");
    }
    return Stream.of(BoardSide.values())
        .filter(it -> it.id().equals(side))
        .findFirst()
        .orElseThrow(() -> wrong("legs", "must be solder or component, is " + side));
  }

  private Path photo() {
    String name = text("photo").orElseThrow(() -> wrong("photo", "is empty; name the photo"));
    try {
      Path folder = file.toAbsolutePath().getParent();
      return folder.resolve(name).normalize();
    } catch (InvalidPathException e) {
      throw wrong("photo", "is no path: " + name);
    }
  }

  private Stage stage(String name) {
    return Stage.of(name)
        .orElseThrow(
            () ->
                wrong(
                    "stage",
                    "must be "
                        + Stream.of(Stage.values()).map(Stage::id).collect(Collectors.joining(", "))
                        + ", is "
                        + name));
  }

  private BodySide body(String side) {
    return Stream.of(BodySide.values())
        .filter(it -> it.id().equals(side))
        .findFirst()
        .orElseThrow(() -> wrong("body", "must be above, right, below or left, is " + side));
  }

  private RowSpec row() {
    RowRequest own =
        new RowRequest(
            text("connector"),
            whole("row", 1, 99),
            whole("leads", 3, 500),
            pitch(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false,
            false);
    RowRequest asked = own.isEmpty() ? defaults.row() : own;
    if (asked.isEmpty()) {
      throw wrong("connector", "is empty; name a connector, or leads and pitch_mm");
    }
    try {
      return asked.spec();
    } catch (UserError e) {
      throw wrong(own.connector().isPresent() ? "connector" : "leads", e.getMessage());
    }
  }

  private OptionalDouble pitch() {
    Optional<String> text = text("pitch_mm");
    if (text.isEmpty()) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(Double.parseDouble(text.get()));
    } catch (NumberFormatException e) {
      throw wrong("pitch_mm", "must be a number with a decimal point, is " + text.get());
    }
  }

  private OptionalInt whole(String column, int least, int most) {
    Optional<String> text = text(column);
    if (text.isEmpty()) {
      return OptionalInt.empty();
    }
    try {
      int value = Integer.parseInt(text.get());
      if (value >= least && value <= most) {
        return OptionalInt.of(value);
      }
    } catch (NumberFormatException e) {
      // Said below, in the same words as a number out of range.
    }
    throw wrong(column, "must be " + least + " to " + most + ", is " + text.get());
  }

  private Optional<String> text(String column) {
    return line.findField(column).map(String::strip).filter(text -> !text.isEmpty());
  }

  private UserError wrong(String column, String what) {
    return new UserError(
        "%s, line %d, column %s: %s".formatted(file, line.getStartingLineNumber(), column, what));
  }
}
