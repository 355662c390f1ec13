package leadlight.archive;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Stream;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.BodySide;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
import org.apache.hadoop.conf.Configuration;
import org.apache.spark.sql.Row;

/** One line of the table: which photo, and what is asked of it. */
final class PhotoAsked {

  private final Row line;

  PhotoAsked(Row line) {
    this.line = line;
  }

  private Optional<String> text(String column) {
    String text = line.getAs(column);
    return text == null || text.isEmpty() ? Optional.empty() : Optional.of(text);
  }

  /** What {@code score} would be told. */
  Settings settings(AcceptanceSet limits) {
    RowRequest row =
        new RowRequest(
            text("connector"),
            whole("row"),
            whole("leads"),
            text("pitch_mm").map(PhotoAsked::pitch).orElse(OptionalDouble.empty()),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false,
            false);
    Optional<RowHint> hint = RowHint.of(Optional.empty(), text("body").map(PhotoAsked::body));
    return new Settings(row.spec(), whole("class").orElse(2), limits.id(), hint);
  }

  private OptionalInt whole(String column) {
    return text(column)
        .map(text -> OptionalInt.of(number(column, text, Integer::valueOf)))
        .orElse(OptionalInt.empty());
  }

  private static OptionalDouble pitch(String text) {
    return OptionalDouble.of(number("pitch_mm", text, Double::valueOf));
  }

  private static <T> T number(String column, String text, Function<String, T> read) {
    try {
      return read.apply(text);
    } catch (NumberFormatException e) {
      throw new UserError(column + " is no number: " + text);
    }
  }

  private static BodySide body(String side) {
    return Stream.of(BodySide.values())
        .filter(it -> it.id().equals(side))
        .findFirst()
        .orElseThrow(() -> new UserError("body must be above, right, below or left, is " + side));
  }

  /** A photo as a file of this machine. */
  record Local(Path file, boolean copy) implements AutoCloseable {

    @Override
    public void close() {
      if (copy) {
        try {
          Files.deleteIfExists(file);
          Files.deleteIfExists(file.getParent());
        } catch (IOException e) {
          // Left in the temporary folder: the result stands.
        }
      }
    }
  }

  /** The photo here; one at an address is fetched by Spark's own means. */
  Local local() {
    String photo = text("photo").orElseThrow(() -> new UserError("no photo is named"));
    if (!photo.matches("[a-z][a-z0-9]+:/.*")) {
      return new Local(Path.of(photo).normalize(), false);
    }
    org.apache.hadoop.fs.Path from = new org.apache.hadoop.fs.Path(photo);
    Local to = new Local(temporary().resolve(from.getName()), true);
    try {
      from.getFileSystem(new Configuration())
          .copyToLocalFile(false, from, new org.apache.hadoop.fs.Path(to.file().toUri()), true);
      return to;
    } catch (IOException e) {
      to.close();
      throw new UserError(photo + " cannot be fetched: " + e.getMessage());
    }
  }

  private static Path temporary() {
    try {
      return Files.createTempDirectory("leadlight-archive");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
