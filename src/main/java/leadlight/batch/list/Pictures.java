package leadlight.batch.list;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Set;

/** Which files of a folder are taken for photos: by ending, and none that is hidden. */
final class Pictures {

  private static final Set<String> ENDINGS =
      Set.of("jpg", "jpeg", "png", "tif", "tiff", "bmp", "webp");

  private Pictures() {}

  static boolean isPicture(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".")
        && ENDINGS.contains(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
  }
}
