package leadlight.record;

import java.nio.file.Path;
import leadlight.record.engine.RecordPlace;

/** What holds for a record in a folder holds for one on a server. */
class SharedJobRecordTest extends JobRecordTest {

  private final SharedPlaces places = new SharedPlaces();

  @Override
  RecordPlace at(Path path) {
    return places.at(path);
  }

  /** Asked of the tables by any client; SharedRecordTest does. */
  @Override
  void sentencesStandBesideTheCodesForReadersOfTheTables() {}

  /** A server has no file. */
  @Override
  void aForeignFileIsRefusedInOneLine() {}
}
