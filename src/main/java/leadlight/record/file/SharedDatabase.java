package leadlight.record.file;

import java.sql.SQLException;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import leadlight.model.UserError;
import leadlight.record.engine.RecordPlace;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * A record on a PostgreSQL server. Writers wait for each other by an advisory lock, so that they
 * make one chain and later rows have higher numbers, as in a file. Reads see one moment.
 *
 * <p>Where the connection is lost, all is tried again for a minute. Each write leaves its number in
 * the same transaction: if the answer to a commit was lost, that number says whether it took place.
 */
final class SharedDatabase implements Database {

  /** The advisory lock of writers: "lead" in ASCII, a number that no other program is to use. */
  private static final long LOCK = 0x6c656164L;

  private static final long PAUSE_MS = 250;

  private final RecordPlace.Server server;
  private final Jdbi jdbi;
  private final String writer = UUID.randomUUID().toString();
  private Handle handle;
  private long writes;
  private boolean closed;

  private SharedDatabase(RecordPlace.Server server, Jdbi jdbi) {
    this.server = server;
    this.jdbi = jdbi;
    this.handle = jdbi.open();
  }

  static SharedDatabase open(RecordPlace.Server server) {
    try {
      PGSimpleDataSource source = SharedServer.source(server);
      SharedServer.migrate(server, source);
      return new SharedDatabase(server, Jdbi.create(source));
    } catch (FlywayException | JdbiException e) {
      throw ServerTrouble.of(server, e);
    }
  }

  /** Whether a database holds a record. */
  static boolean isThere(RecordPlace.Server server) {
    try (Handle asking = Jdbi.create(SharedServer.source(server)).open()) {
      return asking
          .select("SELECT to_regclass('flyway_schema_history') IS NOT NULL")
          .mapTo(Boolean.class)
          .one();
    } catch (JdbiException e) {
      throw ServerTrouble.of(server, e);
    }
  }

  private interface Work<T> {
    T run() throws SQLException;
  }

  @Override
  public synchronized <T> T read(HandleCallback<T, SQLException> query) {
    return patiently(() -> snapshot(query));
  }

  @Override
  public synchronized <T> T stream(HandleCallback<T, SQLException> query) {
    return guarded(() -> snapshot(query));
  }

  @Override
  public <T> T moment(HandleCallback<T, SQLException> query) {
    return stream(query);
  }

  private <T> T snapshot(HandleCallback<T, SQLException> query) throws SQLException {
    if (handle.isInTransaction()) {
      return query.withHandle(handle);
    }
    return handle.inTransaction(
        transaction -> {
          transaction.execute("SET TRANSACTION ISOLATION LEVEL REPEATABLE READ");
          return query.withHandle(transaction);
        });
  }

  @Override
  public synchronized <T> T write(HandleCallback<T, SQLException> change) {
    Write<T> write = new Write<>(change, ++writes);
    return patiently(write::run);
  }

  @Override
  public synchronized <T> T once(HandleCallback<T, SQLException> change) {
    Write<T> write = new Write<>(change, ++writes);
    return guarded(write::run);
  }

  /** A change with its number, as often as it is tried. */
  private final class Write<T> {

    private final HandleCallback<T, SQLException> change;
    private final long number;
    private boolean tried;
    private T answer;

    Write(HandleCallback<T, SQLException> change, long number) {
      this.change = change;
      this.number = number;
    }

    T run() throws SQLException {
      return handle.inTransaction(
          transaction -> {
            transaction
                .select("SELECT pg_advisory_xact_lock(?)", LOCK)
                .map((row, context) -> true)
                .one();
            if (tried && isCommitted(transaction)) {
              return answer;
            }
            transaction.execute(
                "INSERT INTO writer_mark (writer, number) VALUES (?, ?)"
                    + " ON CONFLICT (writer) DO UPDATE SET number = excluded.number",
                writer,
                number);
            answer = change.withHandle(transaction);
            tried = true;
            return answer;
          });
    }

    /** Asked while no other writer is at work, an earlier try of this one included. */
    private boolean isCommitted(Handle transaction) {
      return transaction
          .select(
              "SELECT count(*) > 0 FROM writer_mark WHERE writer = ? AND number = ?",
              writer,
              number)
          .mapTo(Boolean.class)
          .one();
    }
  }

  /** Tried once, on a connection that stands. */
  private <T> T guarded(Work<T> work) {
    try {
      if (!handle.getConnection().isValid(SharedServer.CONNECT_S)) {
        discard();
      }
      reopen();
      return work.run();
    } catch (SQLException | JdbiException e) {
      throw ServerTrouble.of(server, e);
    }
  }

  /** Tries again, on a new connection, while the server does not answer. */
  private <T> T patiently(Work<T> work) {
    long began = System.nanoTime();
    while (true) {
      try {
        reopen();
        return work.run();
      } catch (SQLException | JdbiException e) {
        long waited = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - began);
        if (!ServerTrouble.passes(e) || waited > SharedServer.PATIENCE_MS) {
          throw ServerTrouble.of(server, e);
        }
        discard();
        pause();
      }
    }
  }

  private void reopen() {
    if (closed) {
      throw new IllegalStateException("the record " + server + " was closed");
    }
    if (handle.isClosed()) {
      handle = jdbi.open();
    }
  }

  private void discard() {
    try {
      handle.close();
    } catch (JdbiException e) {
      // It is gone already, and what it was to roll back with it.
      assert handle.isClosed();
    }
  }

  private void pause() {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new UserError("the record " + server + " did not answer before the program was ended");
    }
  }

  @Override
  public synchronized void close() {
    closed = true;
    try (Handle closing = handle) {
      if (writes > 0) {
        closing.execute("DELETE FROM writer_mark WHERE writer = ?", writer);
      }
    } catch (JdbiException e) {
      // The mark of a program that ended stays; it says nothing of any other.
    }
  }
}
