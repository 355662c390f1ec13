package leadlight.reader;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.model.picture.RowPictures;

/**
 * Writes the pictures that a reader is trained on: {@code joints.bin} holds one picture a joint,
 * {@code typical.bin} one a row, in the order given, without header; {@link RowPictures} says how a
 * picture is laid out. Files appear under their names only when they are whole.
 */
public final class PictureFiles implements AutoCloseable {

  private final Part joints;
  private final Part typical;

  /**
   * Begins both files.
   *
   * @throws UserError if the folder cannot be written
   */
  public PictureFiles(Path folder) {
    joints = new Part(folder.resolve("joints.bin"));
    typical = new Part(folder.resolve("typical.bin"));
  }

  /** Adds a row. */
  public void add(RowPictures row) {
    row.joints().forEach(joints::write);
    typical.write(row.typical());
  }

  /** Gives both files their names. */
  public void finish() {
    joints.finish();
    typical.finish();
  }

  /** Leaves nothing behind unless the files were finished. */
  @Override
  public void close() {
    joints.close();
    typical.close();
  }

  private static final class Part implements AutoCloseable {

    private final Path file;
    private final Path part;
    private final OutputStream out;

    Part(Path file) {
      this.file = file;
      this.part = WholeFile.aside(file.toAbsolutePath());
      try {
        this.out = new BufferedOutputStream(Files.newOutputStream(part, CREATE_NEW, WRITE));
      } catch (IOException e) {
        throw new UserError(part + " cannot be written; check the folder's permissions");
      }
    }

    void write(byte[] bytes) {
      try {
        out.write(bytes);
      } catch (IOException e) {
        throw new UserError(part + " cannot be written (" + e.getMessage() + "); free some space");
      }
    }

    void finish() {
      try {
        out.close();
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
      } catch (IOException e) {
        throw new UserError(file + " cannot be written (" + e.getMessage() + "); free some space");
      }
    }

    @Override
    public void close() {
      try {
        out.close();
        Files.deleteIfExists(part);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
