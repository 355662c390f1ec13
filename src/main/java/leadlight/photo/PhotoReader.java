package leadlight.photo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.model.PhotoInfo;
import leadlight.model.UserError;
import leadlight.vision.Codec;
import leadlight.vision.Frame;

/** Placeholder until intake is built: decodes without limits, orientation, time and hash. */
public final class PhotoReader {

  /** Reads a file. */
  public Photo read(Path file) {
    try {
      Frame frame =
          Codec.decode(Files.readAllBytes(file))
              .orElseThrow(() -> new UserError(file + ": not a picture"));
      PhotoInfo info =
          new PhotoInfo(
              file.getFileName().toString(),
              "",
              frame.widthPx(),
              frame.heightPx(),
              "",
              8,
              1,
              Optional.empty());
      return new Photo(info, frame);
    } catch (IOException e) {
      throw new UserError(file + ": cannot be read");
    }
  }
}
