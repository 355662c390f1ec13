package leadlight.record.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What docs/record.md promises of the file: each of the five settings, and each refusal. */
class DatabaseTest {

  @TempDir private Path folder;

  private Connection another() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE));
  }

  private void outside(String... lines) throws SQLException {
    try (Connection connection = another();
        Statement statement = connection.createStatement()) {
      for (String line : lines) {
        statement.execute(line);
      }
    }
  }

  private static String pragma(Database database, String name) {
    return database.read(handle -> handle.select("PRAGMA " + name).mapTo(String.class).one());
  }

  @Test
  void whatRefersToNothingIsNotTaken() {
    try (Database database = Database.open(folder)) {
      assertThatThrownBy(
              () ->
                  database.write(
                      handle -> handle.execute("INSERT INTO board VALUES (1, 99, 'of no job')")))
          .hasRootCauseInstanceOf(SQLiteException.class)
          .hasStackTraceContaining("FOREIGN KEY");
    }
  }

  @Test
  void aWriteWaitsAMinuteForOtherPrograms() {
    try (Database database = Database.open(folder)) {
      assertThat(pragma(database, "busy_timeout")).isEqualTo("60000");
    }
  }

  /** A file that another program left in write-ahead mode would not be whole by itself. */
  @Test
  void theRecordIsOneFileWhateverModeItWasLeftIn() throws SQLException {
    Database.open(folder).close();
    outside("PRAGMA journal_mode = WAL");

    try (Database database = Database.open(folder)) {
      assertThat(pragma(database, "journal_mode")).isEqualTo("delete");
      database.write(handle -> handle.execute("INSERT INTO job VALUES (1, 'job')"));
      assertThat(folder.resolve(Database.FILE + "-wal")).doesNotExist();
    }
  }

  /** SQLite: 2 is FULL, which syncs before a transaction returns. */
  @Test
  void whatWasWrittenIsOnTheDisk() {
    try (Database database = Database.open(folder)) {
      assertThat(pragma(database, "synchronous")).isEqualTo("2");
    }
  }

  /** Else two programs that read before they write could lock each other out half-way. */
  @Test
  void aWriteHoldsTheFileFromItsFirstMoment() {
    try (Database database = Database.open(folder)) {
      SQLiteErrorCode code =
          database.write(
              handle -> {
                try (Connection other = another();
                    Statement statement = other.createStatement()) {
                  statement.execute("PRAGMA busy_timeout = 0");
                  statement.execute("BEGIN IMMEDIATE");
                  return SQLiteErrorCode.SQLITE_OK;
                } catch (SQLiteException e) {
                  return e.getResultCode();
                }
              });
      assertThat(code).isEqualTo(SQLiteErrorCode.SQLITE_BUSY);
    }
  }

  @Test
  void aFailedWriteLeavesNothing() {
    try (Database database = Database.open(folder)) {
      assertThatThrownBy(
              () ->
                  database.write(
                      handle -> {
                        handle.execute("INSERT INTO job VALUES (1, 'half')");
                        throw new UserError("stop");
                      }))
          .isInstanceOf(UserError.class);
      assertThat(
              database.<Integer>read(
                  handle -> handle.select("SELECT count(*) FROM job").mapTo(Integer.class).one()))
          .isZero();
    }
  }

  @Test
  void closedIsClosed() {
    Database database = Database.open(folder);
    database.close();
    assertThatThrownBy(() -> pragma(database, "user_version")).isInstanceOf(Exception.class);
  }

  @Test
  void aRecordOfANewerLeadlightIsLeftAlone() throws SQLException {
    Database.open(folder).close();
    outside(
        "INSERT INTO flyway_schema_history SELECT 1000, '1000', 'later', type, 'V1000__later.sql',"
            + " checksum, installed_by, installed_on, execution_time, success"
            + " FROM flyway_schema_history WHERE installed_rank = 1");

    assertThatThrownBy(() -> Database.open(folder))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("newer Leadlight");
  }

  @Test
  void openingASecondTimeChangesNothing() throws IOException {
    Database.open(folder).close();
    byte[] before = Files.readAllBytes(folder.resolve(Database.FILE));
    Database.open(folder).close();
    assertThat(Files.readAllBytes(folder.resolve(Database.FILE))).isEqualTo(before);
  }

  @Test
  void aFolderThatIsAFileIsOneLine() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "no folder");
    assertThatThrownBy(() -> Database.open(file))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("choose a folder");
  }

  @Test
  void aFileDamagedWhileOpenIsOneLine() throws IOException {
    try (Database database = Database.open(folder)) {
      byte[] bytes = Files.readAllBytes(folder.resolve(Database.FILE));
      for (int i = 100; i < bytes.length; i++) {
        bytes[i] = (byte) (31 * i);
      }
      Files.write(folder.resolve(Database.FILE), bytes);
      assertThatThrownBy(
              () ->
                  database.write(
                      handle -> {
                        handle.execute("INSERT INTO job VALUES (2, 'x')");
                        return handle.select("SELECT count(*) FROM job").mapTo(Integer.class).one();
                      }))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("damaged");
    }
  }
}
