package leadlight.record.file;

import java.sql.SQLException;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Rows of one form after the other, sent to the database together: a server is far away. */
final class RowBatch {

  /** Rows that are sent at once; common practice, no source. */
  static final int SIZE = 500;

  /** What SQLite says of a value that a table does not take. */
  private static final Set<SQLiteErrorCode> RULES =
      Set.of(
          SQLiteErrorCode.SQLITE_CONSTRAINT,
          SQLiteErrorCode.SQLITE_MISMATCH,
          SQLiteErrorCode.SQLITE_TOOBIG);

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

  /**
   * Whether the tables' own rules refused a row, which was altered or lacks what it refers to. A
   * server says so by the classes 22 and 23 of its states (PostgreSQL, appendix A).
   */
  static boolean isRefused(Throwable e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLiteException sqlite) {
        return RULES.contains(SQLiteErrorCode.getErrorCode(sqlite.getResultCode().code & 0xff));
      }
      if (cause instanceof SQLException said && said.getSQLState() != null) {
        return said.getSQLState().startsWith("22") || said.getSQLState().startsWith("23");
      }
    }
    return false;
  }

  /** Sends what is left. */
  void send() {
    waiting.filter(batch -> batch.size() > 0).ifPresent(PreparedBatch::execute);
    waiting.ifPresent(PreparedBatch::close);
    waiting = Optional.empty();
    form = "";
  }
}
