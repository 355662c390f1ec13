package leadlight.data;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
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
    Path aside = target.resolveSibling(target.getFileName() + ".part");
    try {
      try (OutputStream out = Files.newOutputStream(aside)) {
        content.to(out);
      }
      move(aside, target);
    } catch (IOException e) {
      throw new UserError(file + " cannot be written; choose a folder that exists and is yours");
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
