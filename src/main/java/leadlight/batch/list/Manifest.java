package leadlight.batch.list;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.UserError;

/**
 * A list of photos as a table (RFC 4180, UTF-8, first line a header). Columns: {@code photo} (path,
 * from the manifest's folder) and {@code job} are needed; {@code board}, {@code stage}, {@code
 * attempt}, {@code connector}, {@code row}, {@code leads}, {@code pitch_mm}, {@code body}, {@code
 * class}, {@code port}, {@code legs} may be left out or empty; {@code legs} is the side of the
 * board, "solder" or "component", that a photo of anchor legs shows.
 */
final class Manifest {

  private Manifest() {}

  static List<JobPhoto> read(Path file, Defaults defaults) {
    List<JobPhoto> photos = new ArrayList<>();
    Map<JobPhoto, Long> lines = new HashMap<>();
    try (CsvReader<NamedCsvRecord> csv =
        CsvReader.builder().detectBomHeader(true).ofNamedCsvRecord(file)) {
      for (NamedCsvRecord line : csv) {
        if (photos.isEmpty()) {
          ManifestLine.checkHeader(file, line.getHeader());
        }
        JobPhoto photo = new ManifestLine(file, line, defaults).read();
        Long before = lines.putIfAbsent(photo, line.getStartingLineNumber());
        if (before != null) {
          throw new UserError(
              "%s, line %d: the same as line %d; remove one of them"
                  .formatted(file, line.getStartingLineNumber(), before));
        }
        photos.add(photo);
      }
    } catch (CsvParseException e) {
      throw new UserError(file + " is no table: " + firstLine(e));
    } catch (MalformedInputException e) {
      throw new UserError(file + " is not UTF-8; save it as UTF-8");
    } catch (IOException | UncheckedIOException e) {
      throw new UserError(
          Files.exists(file)
              ? file + " cannot be read; check its permissions and that it is UTF-8"
              : file + " does not exist; check the path");
    }
    if (photos.isEmpty()) {
      throw new UserError(file + " lists no photo");
    }
    return photos;
  }

  private static String firstLine(Exception e) {
    return String.valueOf(e.getMessage()).lines().findFirst().orElse("");
  }
}
