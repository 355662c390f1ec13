package leadlight.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import leadlight.model.UserError;

/** Which files of a folder are taken for photos: by ending, and none that is hidden. */
public final class PhotoFiles {

  private static final Set<String> ENDINGS =
      Set.of("jpg", "jpeg", "png", "tif", "tiff", "bmp", "webp");

  private PhotoFiles() {}

  /**
   * The pictures of a folder itself in the order of their names.
   *
   * @throws UserError if it is none, or cannot be read
   */
  public static List<Path> in(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw new UserError(folder + " is no folder; name the one that the photos lie in");
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files.filter(PhotoFiles::isPicture).sorted().toList();
    } catch (IOException e) {
      throw new UserError(folder + " cannot be read; check its permissions");
    }
  }

  /** By its name alone. */
  public static boolean isPicture(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".")
        && ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
  }
}
