package leadlight.photo;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;

/** Whether a file's extension fits its content. */
final class FileName {

  private static final Map<String, List<String>> EXTENSIONS =
      Map.of(
          "jpeg", List.of("jpg", "jpeg", "jpe", "jfif", "mpo"),
          "png", List.of("png"),
          "tiff", List.of("tif", "tiff"),
          "bmp", List.of("bmp", "dib"),
          "webp", List.of("webp"));

  private FileName() {}

  /** What to say if the extension says something else. */
  static Optional<Note> mismatch(Path file, String format) {
    String name = file.getFileName().toString();
    String extension = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return EXTENSIONS.get(format).contains(extension)
        ? Optional.empty()
        : Optional.of(new NoteOfPhoto.OtherFormat(format.toUpperCase(Locale.ROOT)));
  }
}
