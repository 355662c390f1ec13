package leadlight.connector.footprint;

import java.nio.file.Path;
import java.util.Optional;

/** The hand-made footprints of {@code src/test/resources/footprints}. */
final class Footprints {

  private Footprints() {}

  static Path file(String name) {
    return Path.of("src/test/resources/footprints", name + ".kicad_mod");
  }

  static FootprintImport.Imported imported(String name) {
    return FootprintImport.of(file(name), Optional.empty());
  }
}
