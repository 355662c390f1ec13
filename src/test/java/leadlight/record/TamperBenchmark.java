package leadlight.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.model.UserError;
import leadlight.record.file.Database;
import leadlight.record.file.Seal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * Alters one value of every column of every table of a record, one after the other, and counts what
 * `record verify` has to say: {@code mvn test -Dtest=TamperBenchmark -Dtamper.record=FOLDER},
 * FOLDER with a record that is sound; it is copied. Figures are kept in docs/trust.md.
 */
@EnabledIfSystemProperty(named = "tamper.record", matches = ".+")
class TamperBenchmark {

  /** What trainees answered may be erased and is left out of the chain; Flyway times itself. */
  private static final Set<String> LEFT_OUT =
      Set.of("drill_answer", "drill_told", "sitting", "trainee", "flyway_schema_history");

  @TempDir private Path folder;

  private record Column(String table, String name) {}

  @Test
  void everyColumn() throws IOException, SQLException {
    byte[] whole = Files.readAllBytes(Path.of(System.getProperty("tamper.record"), Database.FILE));
    Files.write(folder.resolve(Database.FILE), whole);
    Seal seal;
    try (JobRecord record = JobRecord.open(folder)) {
      seal = record.seal();
      assertThat(record.troubles(Optional.of(seal))).isEmpty();
    }
    TreeMap<String, List<String>> outcomes = new TreeMap<>();
    for (Column column : columns()) {
      Files.write(folder.resolve(Database.FILE), whole);
      String outcome = altered(column).orElseGet(() -> told(seal) ? "told" : "NOT TOLD");
      outcomes
          .computeIfAbsent(outcome, key -> new ArrayList<>())
          .add(column.table + "." + column.name);
    }
    outcomes.forEach(
        (outcome, which) ->
            System.out.println(
                which.size() + " " + outcome + (outcome.equals("told") ? "" : ": " + which)));
    assertThat(outcomes).doesNotContainKey("NOT TOLD");
  }

  private List<Column> columns() throws SQLException {
    List<Column> columns = new ArrayList<>();
    try (Connection connection = connection();
        Statement statement = connection.createStatement();
        ResultSet rows =
            statement.executeQuery(
                "SELECT m.name, c.name FROM sqlite_master m, pragma_table_info(m.name) c"
                    + " WHERE m.type = 'table' AND m.name NOT LIKE 'sqlite_%' ORDER BY 1, c.cid")) {
      while (rows.next()) {
        if (!LEFT_OUT.contains(rows.getString(1))) {
          columns.add(new Column(rows.getString(1), rows.getString(2)));
        }
      }
    }
    return columns;
  }

  /** Alters the first row, or all rows where they have no number; why not, if it cannot be. */
  private Optional<String> altered(Column column) throws SQLException {
    try (Connection connection = connection();
        Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA foreign_keys = OFF");
      statement.execute("PRAGMA ignore_check_constraints = ON");
      String update =
          ("UPDATE %s SET %s = CASE WHEN %2$s IS NULL THEN 'x'"
                  + " WHEN typeof(%2$s) IN ('integer', 'real') THEN %2$s + 700"
                  + " ELSE %2$s || 'x' END")
              .formatted(column.table, column.name);
      String first = " WHERE rowid = (SELECT min(rowid) FROM %s)".formatted(column.table);
      int rows;
      try {
        rows = statement.executeUpdate(update + first);
      } catch (SQLException e) {
        rows = statement.executeUpdate(update);
      }
      return rows > 0 ? Optional.empty() : Optional.of("of tables without rows");
    } catch (SQLException e) {
      return Optional.of("refused by SQLite");
    }
  }

  private Connection connection() throws SQLException {
    return DriverManager.getConnection("jdbc:sqlite:" + folder.resolve(Database.FILE));
  }

  private boolean told(Seal seal) {
    try (JobRecord record = JobRecord.open(folder)) {
      return !record.troubles(Optional.of(seal)).isEmpty();
    } catch (UserError e) {
      return true;
    }
  }
}
