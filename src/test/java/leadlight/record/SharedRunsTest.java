package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import leadlight.record.engine.RecordPlace;
import org.junit.jupiter.api.Test;

/** The same on a server. */
class SharedRunsTest extends RunsTest {

  private final SharedPlaces places = new SharedPlaces();

  @Override
  RecordPlace at(Path path) {
    return places.at(path);
  }

  /** By its owner, past the references that the server guards. */
  @Override
  void alter(RecordPlace place, String line) {
    OwnServer.ofAllTests()
        .execute(
            ((RecordPlace.Server) place).database(),
            "SET session_replication_role = replica; " + line);
  }

  /** A database has a record once one was made. */
  @Override
  @Test
  void aFolderHoldsARecordOnceOneWasMade() {
    assertThat(JobRecord.isIn(OwnServer.ofAllTests().empty())).isFalse();
    assertThat(JobRecord.isIn(at(Path.of("any")))).isTrue();
  }

  @Override
  String rowOf(String table) {
    return table + ", 1 rows";
  }
}
