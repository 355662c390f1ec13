package leadlight.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The newest picture of a folder, for microscopes that come with a program of their own. */
final class WatchedFolder {

  private static final String PICTURE = ".*\\.(jpe?g|png|tiff?|bmp|webp)";

  private final Path folder;

  WatchedFolder(Path folder) {
    this.folder = folder;
  }

  /** A picture and when it was last written: the same again means the same picture. */
  record Newest(Path file, String stamp) {}

  /** The newest; empty if there is none, or if the folder is gone. */
  Optional<Newest> newest() {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> pictures =
          files.filter(f -> name(f).matches(PICTURE) && Files.isRegularFile(f)).toList();
      return pictures.stream()
          .max(Comparator.comparing(WatchedFolder::time).thenComparing(WatchedFolder::name))
          .map(file -> new Newest(file, time(file) + " " + name(file)));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  private static String name(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT);
  }

  private static FileTime time(Path file) {
    try {
      return Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return FileTime.fromMillis(0);
    }
  }
}
