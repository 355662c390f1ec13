package leadlight.record.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import leadlight.model.UserError;
import leadlight.record.engine.SharedMigrations;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.HandleCallback;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The SQLite file of a record folder, brought up to date when opened. One connection, used by one
 * thread at a time. A write is one transaction that is on the disk when it returns ("PRAGMA
 * synchronous = FULL", rollback journal: docs/record.md says why); it waits for other programs.
 */
final class SqliteDatabase implements Database {

  private static final String LOCK = "migrate.lock";
  private static final int PATIENCE_MS = 60_000;

  private final Path file;
  private final Handle handle;

  private SqliteDatabase(Path file, Handle handle) {
    this.file = file;
    this.handle = handle;
  }

  static SqliteDatabase open(Path folder) {
    Path file = folder.resolve(FILE);
    try {
      Files.createDirectories(folder);
      SQLiteDataSource source = source(file);
      migrate(folder, source);
      return new SqliteDatabase(file, Jdbi.create(source).open());
    } catch (IOException e) {
      throw new UserError(
          "the record in " + folder + " cannot be written; choose a folder that is yours");
    } catch (FlywayException | JdbiException e) {
      throw trouble(file, e);
    }
  }

  private static SQLiteDataSource source(Path file) {
    SQLiteConfig config = new SQLiteConfig();
    config.enforceForeignKeys(true);
    config.setBusyTimeout(PATIENCE_MS);
    config.setJournalMode(SQLiteConfig.JournalMode.DELETE);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file.toAbsolutePath());
    return source;
  }

  /**
   * Flyway cannot lock an SQLite file against a second Flyway, so a lock file does between programs
   * and this method's own lock within one.
   */
  private static synchronized void migrate(Path folder, SQLiteDataSource source)
      throws IOException {
    try (FileChannel channel =
            FileChannel.open(
                folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      Flyway flyway =
          Flyway.configure(SqliteDatabase.class.getClassLoader())
              .dataSource(source)
              .locations(SharedMigrations.MIGRATIONS)
              .load();
      MigrationInfo newest = flyway.info().current();
      if (isFuture(newest)) {
        throw new UserError(
            "the record in "
                + folder
                + " was written by a newer Leadlight; use that one, or another record folder");
      }
      flyway.migrate();
      assert lock.isValid();
    }
  }

  private static boolean isFuture(MigrationInfo newest) {
    return newest != null && newest.getState().isApplied() && !newest.getState().isResolved();
  }

  @Override
  public synchronized <T> T read(HandleCallback<T, SQLException> query) {
    return guarded(() -> query.withHandle(handle));
  }

  @Override
  public <T> T stream(HandleCallback<T, SQLException> query) {
    return read(query);
  }

  @Override
  public <T> T moment(HandleCallback<T, SQLException> query) {
    return write(query);
  }

  @Override
  public synchronized <T> T write(HandleCallback<T, SQLException> change) {
    return guarded(() -> handle.inTransaction(change));
  }

  @Override
  public <T> T once(HandleCallback<T, SQLException> change) {
    return write(change);
  }

  private interface Work<T> {
    T run() throws SQLException;
  }

  private <T> T guarded(Work<T> work) {
    try {
      return work.run();
    } catch (SQLException | JdbiException e) {
      throw trouble(file, e);
    }
  }

  private static RuntimeException trouble(Path file, Exception e) {
    for (Throwable cause = e; cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLiteException sqlite) {
        SQLiteErrorCode code = sqlite.getResultCode();
        return switch (SQLiteErrorCode.getErrorCode(code.code & 0xff)) {
          case SQLITE_BUSY, SQLITE_LOCKED ->
              new UserError(
                  "the record " + file + " is in use by another program; close that, then rerun");
          case SQLITE_FULL, SQLITE_IOERR ->
              new UserError(
                  "the record "
                      + file
                      + " cannot be written, its disk is full or gone; nothing"
                      + " half-written stays; make room, then rerun");
          case SQLITE_READONLY, SQLITE_CANTOPEN, SQLITE_PERM ->
              new UserError(
                  "the record " + file + " cannot be written; choose a folder that is yours");
          case SQLITE_NOTADB, SQLITE_CORRUPT ->
              new UserError(
                  "the record "
                      + file
                      + " is damaged or no record; restore it from a copy, or"
                      + " name another folder");
          default -> new IllegalStateException(sqlite);
        };
      }
    }
    // A database whose tables are not ours, or a history that does not fit the program.
    return e instanceof FlywayException
        ? new UserError(
            "the record "
                + file
                + " is damaged or no record; restore it from a copy, or"
                + " name another folder")
        : new IllegalStateException(e);
  }

  @Override
  public synchronized void close() {
    handle.close();
  }
}
