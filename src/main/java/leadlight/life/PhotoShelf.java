package leadlight.life;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import leadlight.data.Hash;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.model.result.PhotoInfo;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.record.scoring.Scoring;
import leadlight.vision.Frame;

/**
 * The record's own copies of photos, in {@code photos/} of its folder, each in a folder named by
 * the SHA-256 of its bytes, under the name it had. So a record outlives the folders it was made
 * from.
 */
public final class PhotoShelf {

  private final Path folder;

  /** The shelf of a record's folder; made when a photo is first put there. */
  public PhotoShelf(Path record) {
    this.folder = record.resolve("photos");
  }

  /**
   * Keeps a copy.
   *
   * @return where it lies
   * @throws UserError if it cannot be written
   */
  public Path keep(Path photo) {
    try {
      return keep(Files.readAllBytes(photo), photo.getFileName().toString());
    } catch (IOException e) {
      throw new UserError(photo + " cannot be read; check its permissions");
    }
  }

  /** The same of a photo that comes from a camera. */
  public Path keep(byte[] content, String name) {
    Path kept = folder.resolve(Hash.sha256(content)).resolve(name);
    if (!Files.exists(kept)) {
      try {
        Files.createDirectories(kept.getParent());
      } catch (IOException e) {
        throw new UserError(folder + " cannot be written; make room, or choose another record");
      }
      WholeFile.write(kept, content);
    }
    return kept;
  }

  /** The photo of a scoring, from where it was or from the shelf; empty if neither has it. */
  public Optional<Photo> open(Scoring scoring) {
    return Stream.of(scoring.photoPath(), kept(scoring.photo()))
        .filter(path -> isSame(path, scoring.photo().sha256()))
        .findFirst()
        .flatMap(PhotoShelf::read);
  }

  /** What is made of a kept picture, "HASH/NAME"; empty if it is gone or was changed. */
  <T> Optional<T> picture(String kept, Function<Frame, T> made) {
    Path path = folder.resolve(kept).normalize();
    boolean ours = kept.matches("[0-9a-f]{64}/[^/\\\\]+") && isSame(path, kept.substring(0, 64));
    Optional<Photo> open = ours ? read(path) : Optional.empty();
    try {
      return open.map(photo -> made.apply(photo.frame()));
    } finally {
      open.ifPresent(Photo::close);
    }
  }

  private Path kept(PhotoInfo photo) {
    return folder.resolve(photo.sha256().toLowerCase(Locale.ROOT)).resolve(photo.file());
  }

  private static boolean isSame(Path path, String sha256) {
    try {
      return Files.isRegularFile(path) && Hash.sha256(path).equals(sha256);
    } catch (IOException e) {
      return false;
    }
  }

  private static Optional<Photo> read(Path path) {
    try {
      return Optional.of(new PhotoReader().read(path));
    } catch (UserError e) {
      return Optional.empty();
    }
  }
}
