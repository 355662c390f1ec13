package leadlight.record;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import leadlight.record.engine.RecordPlace;

/** Records on a server in place of those in folders: each name has a database of its own. */
final class SharedPlaces {

  private final Map<Path, RecordPlace.Server> places = new HashMap<>();

  RecordPlace.Server at(Path path) {
    return places.computeIfAbsent(path, name -> OwnServer.ofAllTests().record());
  }
}
