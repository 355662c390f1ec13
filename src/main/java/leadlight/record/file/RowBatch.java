package leadlight.record.file;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** Rows of one form after the other, sent to the database together: a server is far away. */
final class RowBatch {

  /** Rows that are sent at once; common practice, no source. */
  static final int SIZE = 500;

  private final Handle handle;
  private String form = "";
  private Optional<PreparedBatch> waiting = Optional.empty();

  RowBatch(Handle handle) {
    this.handle = handle;
  }

  void add(String table, Map<String, Object> row) {
    String now =
        "INSERT INTO %s (%s) VALUES (%s)"
            .formatted(
                table,
                String.join(", ", row.keySet()),
                String.join(", ", Collections.nCopies(row.size(), "?")));
    if (!now.equals(form)) {
      send();
      form = now;
      waiting = Optional.of(handle.prepareBatch(now));
    }
    PreparedBatch batch = waiting.orElseThrow();
    batch.add(row.values().toArray());
    if (batch.size() == SIZE) {
      batch.execute();
    }
  }

  /** Sends what is left. */
  void send() {
    waiting.filter(batch -> batch.size() > 0).ifPresent(PreparedBatch::execute);
    waiting.ifPresent(PreparedBatch::close);
    waiting = Optional.empty();
    form = "";
  }
}
