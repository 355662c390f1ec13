package leadlight.record;

import java.nio.file.Path;
import leadlight.record.engine.RecordPlace;

/** The same on a server. */
class SharedDrillRecordTest extends DrillRecordTest {

  private final SharedPlaces places = new SharedPlaces();

  @Override
  RecordPlace at(Path path) {
    return places.at(path);
  }

  /** A server's files are its own. */
  @Override
  String filed() {
    return "";
  }
}
