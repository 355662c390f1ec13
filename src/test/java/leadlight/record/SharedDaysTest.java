package leadlight.record;

import java.nio.file.Path;
import leadlight.record.engine.RecordPlace;

/** What holds for a record in a folder holds for one on a server. */
class SharedDaysTest extends DaysTest {

  private final SharedPlaces places = new SharedPlaces();

  @Override
  RecordPlace at(Path path) {
    return places.at(path);
  }
}
