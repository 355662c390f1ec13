package leadlight.release;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.stream.Stream;

/** Folders as wholes. */
final class Folders {

  private Folders() {}

  static void remove(Path folder) throws IOException {
    if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  /** Copies with dates and rights; links stay links. */
  static void copy(Path from, Path to) throws IOException {
    Files.createDirectories(to);
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path there = to.resolve(from.relativize(file).toString());
        if (!Files.isDirectory(there)) {
          Files.copy(file, there, StandardCopyOption.COPY_ATTRIBUTES, LinkOption.NOFOLLOW_LINKS);
        }
      }
    }
  }

  /** The one file of that name. */
  static Path only(Path folder, String glob) throws IOException {
    try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, glob)) {
      return found.iterator().next();
    }
  }

  static long bytes(Path file) {
    try (Stream<Path> files = Files.walk(file)) {
      return files
          .filter(f -> Files.isRegularFile(f, LinkOption.NOFOLLOW_LINKS))
          .mapToLong(f -> f.toFile().length())
          .sum();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
