package leadlight.record.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import leadlight.model.UserError;
import leadlight.record.engine.RecordPlace;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.HandleConsumer;

/**
 * An open record, brought up to date. One connection, used by one thread at a time. A write is one
 * transaction that is on the disk when it returns; writes of all programs follow each other.
 *
 * <p>Every method throws {@link UserError} if the record cannot be read or written.
 */
public interface Database extends AutoCloseable {

  /** The file of a record in a folder. */
  String FILE = "leadlight.sqlite";

  /** Opens the record of a folder; makes both if they are not there. */
  static Database open(Path folder) {
    return open(new RecordPlace.Folder(folder));
  }

  /** Opens a record; makes it if it is not there. */
  static Database open(RecordPlace place) {
    Database database =
        place instanceof RecordPlace.Server server
            ? SharedDatabase.open(server)
            : SqliteDatabase.open(((RecordPlace.Folder) place).path());
    database.beginChain();
    return database;
  }

  /** Whether there is a record. */
  static boolean isThere(RecordPlace place) {
    return place instanceof RecordPlace.Server server
        ? SharedDatabase.isThere(server)
        : Files.isRegularFile(((RecordPlace.Folder) place).path().resolve(FILE));
  }

  /** A record that an older Leadlight wrote is proven from now on. */
  private void beginChain() {
    boolean begun =
        read(h -> h.select("SELECT count(*) > 0 FROM entry").mapTo(Boolean.class).one());
    if (!begun) {
      change(h -> new Chain(h).begin());
    }
  }

  /** Reads; may be tried again, so that the query must do nothing but answer. */
  <T> T read(HandleCallback<T, SQLException> query);

  /** Reads row by row into what the caller holds: never tried again. */
  <T> T stream(HandleCallback<T, SQLException> query);

  /** As {@link #stream}, all of it as of one moment. */
  <T> T moment(HandleCallback<T, SQLException> query);

  /**
   * All of it or, if it throws or the program dies, nothing. May be tried again, so that it must
   * change nothing but the record.
   */
  <T> T write(HandleCallback<T, SQLException> change);

  /** The same, never tried again. */
  <T> T once(HandleCallback<T, SQLException> change);

  /** As {@link #write} for a change that answers nothing. */
  default void change(HandleConsumer<SQLException> change) {
    write(
        transaction -> {
          change.useHandle(transaction);
          return null;
        });
  }

  @Override
  void close();
}
