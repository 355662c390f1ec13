package leadlight.data;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;
import leadlight.model.UserError;

/** Files written whole or not at all: aside first, then renamed. */
public final class WholeFile {

  private WholeFile() {}

  /**
   * Writes a file, replacing one of that name; its folder must exist.
   *
   * @throws UserError if the place cannot be written
   */
  public static void write(Path file, byte[] content) {
    write(file, out -> out.write(content));
  }

  /** What writes a file's content, piece by piece. */
  public interface Content {

    /** Writes all of it; the stream is closed by the caller. */
    void to(OutputStream out) throws IOException;
  }

  /**
   * Writes a file that is too long to be made in memory, replacing one of that name; its folder
   * must exist.
   *
   * @throws UserError if the place cannot be written
   */
  public static void write(Path file, Content content) {
    Path target = file.toAbsolutePath();
    Path aside = aside(target);
    try {
      try (OutputStream out = Files.newOutputStream(aside, CREATE_NEW, WRITE)) {
        content.to(out);
      }
      move(aside, target);
    } catch (IOException | UncheckedIOException e) {
      throw new UserError(
          file + " cannot be written; choose a folder that exists, is yours and has room");
    } finally {
      remove(aside);
    }
  }

  /**
   * A name beside a file that nobody else writes to and no link can wait at: random, and to be
   * opened as a new file only.
   */
  public static Path aside(Path target) {
    return target.resolveSibling(target.getFileName() + "." + UUID.randomUUID() + ".part");
  }

  private static void remove(Path aside) {
    try {
      Files.deleteIfExists(aside);
    } catch (IOException e) {
      // Where even this fails, the line about the file itself says what to do.
      return;
    }
  }

  /** Puts a finished file in its place, in one step where the file system can. */
  public static void move(Path aside, Path target) throws IOException {
    try {
      Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
