package leadlight.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.model.result.PhotoInfo;
import leadlight.report.json.JsonReport;

/**
 * The files of one photo in an output folder. All are written aside first and renamed when
 * complete. A photo of the same bytes replaces its own results; another photo's files are never
 * touched: the name gets -2, -3 and so on. A name is claimed by creating its JSON file, so that
 * neither threads nor processes take the same one.
 */
final class ResultFiles {

  /** Leaves room for the endings below the 255 bytes that common file systems allow. */
  private static final int LONGEST_NAME_BYTES = 200;

  private static final JsonFactory FACTORY = new JsonFactory();
  private static final AtomicLong ASIDE = new AtomicLong();

  private final Path folder;
  private final PhotoInfo photo;
  private final String behindName;
  private final Optional<WrittenReport> own;

  ResultFiles(Path folder, PhotoInfo photo, String behindName) {
    this.folder = folder;
    this.photo = photo;
    this.behindName = behindName;
    this.own = Optional.empty();
  }

  /** The files whose report is this one, whatever lies there now. */
  ResultFiles(Path report, PhotoInfo photo) {
    this.folder = report.toAbsolutePath().getParent();
    this.photo = photo;
    this.behindName = "";
    this.own = Optional.of(named(report.getFileName().toString().replaceFirst("\\.json$", "")));
  }

  /** Whether results of the photo lie there already, which {@link #write} would replace. */
  boolean areThere() {
    String base = base();
    WrittenReport files = named(base);
    for (int attempt = 2; Files.exists(files.json()); attempt++) {
      if (holdsThisPhoto(files.json())) {
        return true;
      }
      files = named(base + "-" + attempt);
    }
    return false;
  }

  WrittenReport write(byte[] json, byte[] csv, byte[] png, byte[] html) {
    List<Path> leftovers = new ArrayList<>();
    try {
      Files.createDirectories(folder);
      Path jsonAside = aside(json, leftovers);
      Path csvAside = aside(csv, leftovers);
      Path pngAside = aside(png, leftovers);
      Path htmlAside = aside(html, leftovers);
      WrittenReport target = own.isPresent() ? own.get() : claim(leftovers);
      WholeFile.move(htmlAside, target.page());
      WholeFile.move(pngAside, target.picture());
      WholeFile.move(csvAside, target.csv());
      WholeFile.move(jsonAside, target.json());
      return target;
    } catch (IOException e) {
      leftovers.forEach(ResultFiles::discard);
      throw new UserError(trouble());
    }
  }

  private String trouble() {
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      return "Cannot write results to " + folder + ": it is a file. Name a folder.";
    }
    return "Cannot write the results of "
        + photo.file()
        + " to "
        + folder
        + ": the folder is not writable or the disk is full. Choose another folder.";
  }

  private Path aside(byte[] content, List<Path> leftovers) throws IOException {
    String name =
        ".leadlight-" + ProcessHandle.current().pid() + "-" + ASIDE.incrementAndGet() + ".part";
    Path aside = folder.resolve(name);
    leftovers.add(aside);
    Files.write(aside, content, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    return aside;
  }

  private WrittenReport claim(List<Path> leftovers) throws IOException {
    String base = base();
    for (int attempt = 1; ; attempt++) {
      WrittenReport files = named(attempt == 1 ? base : base + "-" + attempt);
      if (Files.exists(files.json())) {
        if (holdsThisPhoto(files.json())) {
          return files;
        }
      } else if (nobodyElses(files)) {
        try {
          Files.createFile(files.json());
          leftovers.add(files.json());
          return files;
        } catch (FileAlreadyExistsException taken) {
          // Another run was faster; the next name is tried.
        }
      }
    }
  }

  private WrittenReport named(String base) {
    return new WrittenReport(
        folder.resolve(base + ".json"),
        folder.resolve(base + ".csv"),
        folder.resolve(base + ".annotated.png"),
        folder.resolve(base + ".html"));
  }

  private static boolean nobodyElses(WrittenReport files) {
    return Stream.of(files.csv(), files.picture(), files.page()).noneMatch(Files::exists);
  }

  /** The photo's name without its ending, cut between characters if too long. */
  private String base() {
    String file = photo.file();
    int dot = file.lastIndexOf('.');
    String base = dot > 0 ? file.substring(0, dot) : file;
    while (base.getBytes(StandardCharsets.UTF_8).length > LONGEST_NAME_BYTES) {
      base = base.substring(0, base.offsetByCodePoints(base.length(), -1));
    }
    return base + behindName;
  }

  private boolean holdsThisPhoto(Path json) {
    try (JsonParser parser = FACTORY.createParser(json.toFile())) {
      return parser.nextToken() == JsonToken.START_OBJECT && hasOurHash(parser);
    } catch (IOException notOurs) {
      return false;
    }
  }

  private boolean hasOurHash(JsonParser parser) throws IOException {
    boolean ours = false;
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      JsonToken value = parser.nextToken();
      if (name.equals("schema")) {
        ours = parser.getText().startsWith(JsonReport.ANY_SCHEMA);
      } else if (name.equals("sha256") && !value.isStructStart()) {
        return ours && photo.sha256().equals(parser.getText());
      } else if (value.isStructStart() && !name.equals("photo")) {
        parser.skipChildren();
      }
    }
    return false;
  }

  private static void discard(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException stays) {
      // The folder is not writable any more; the first trouble is the one to report.
    }
  }
}
