package leadlight.release;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/** The launcher of a release, for this system. */
final class Launchers {

  private final NativeParts parts;

  Launchers(NativeParts parts) {
    this.parts = parts;
  }

  void write(Path home) throws IOException {
    Path bin = Files.createDirectories(home.resolve("bin"));
    boolean windows = parts.os().startsWith("Windows");
    for (String name :
        windows ? List.of("leadlight.cmd") : List.of("leadlight", "archive-classes")) {
      Path file = bin.resolve(name);
      Files.writeString(
          file,
          Files.readString(Path.of("src/release", name))
              .replace("@OPENCV@", parts.opencv())
              .replace("@SQLITE@", parts.sqlite()));
      if (!windows) {
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
      }
    }
  }
}
