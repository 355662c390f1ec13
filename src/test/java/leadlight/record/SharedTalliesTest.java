package leadlight.record;

import java.nio.file.Path;
import leadlight.record.engine.RecordPlace;

/** The same on a server. */
class SharedTalliesTest extends TalliesTest {

  private final SharedPlaces places = new SharedPlaces();

  @Override
  RecordPlace at(Path path) {
    return places.at(path);
  }
}
