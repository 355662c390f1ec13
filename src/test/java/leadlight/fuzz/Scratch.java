package leadlight.fuzz;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** A folder of this process for what a target reads from files. */
final class Scratch {

  private static final Path FOLDER = make();

  private Scratch() {}

  static Path write(String name, byte[] content) {
    try {
      return Files.write(FOLDER.resolve(name), content);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path folder() {
    return FOLDER;
  }

  /** A name below the folder where nothing lies. */
  static Path cleared(String name) {
    Path folder = FOLDER.resolve(name);
    remove(folder);
    return folder;
  }

  private static void remove(Path folder) {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path make() {
    try {
      Path folder = Files.createTempDirectory("leadlight-fuzz-");
      Runtime.getRuntime().addShutdownHook(new Thread(() -> remove(folder)));
      return folder;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
