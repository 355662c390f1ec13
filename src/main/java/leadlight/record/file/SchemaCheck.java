package leadlight.record.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.model.UserError;
import leadlight.record.engine.Engine;
import leadlight.record.engine.SharedSchema;
import org.jdbi.v3.core.Handle;

/** Compares the tables, indexes and migrations with those of a record made anew. */
final class SchemaCheck {

  private static final String SCHEMA =
      "SELECT type || ' ' || name AS what, coalesce(sql, '') AS how FROM sqlite_master"
          + " WHERE name NOT LIKE 'sqlite_%'";
  private static final String HISTORY =
      "SELECT 'migration ' || coalesce(version, script) AS what,"
          + " script || ' ' || checksum || ' ' || success AS how FROM flyway_schema_history";

  /** Made once: a program knows one schema. */
  private static final class Expected {
    private static final Map<String, String> SCHEMA_AND_HISTORY = madeAnew();
  }

  private static final String TABLE = "table ";

  private SchemaCheck() {}

  /**
   * What differs.
   *
   * @param lines for people
   * @param tableLost whether nothing more can be read of some kind
   */
  record Troubles(List<String> lines, boolean tableLost) {}

  static Troubles troubles(Handle handle) {
    boolean shared = Engine.of(handle) == Engine.POSTGRESQL;
    Map<String, String> ours = shared ? SharedSchema.there(handle) : schema(handle);
    Map<String, String> expected =
        shared ? SharedSchema.madeAnew(handle) : Expected.SCHEMA_AND_HISTORY;
    List<String> troubles = new ArrayList<>();
    boolean tableLost = false;
    TreeSet<String> all = new TreeSet<>(ours.keySet());
    all.addAll(expected.keySet());
    for (String what : all) {
      if (!ours.containsKey(what)) {
        troubles.add("the database lacks its " + what);
        tableLost |= what.startsWith(TABLE);
      } else if (!expected.containsKey(what)) {
        troubles.add("the database has a " + what + " that is not Leadlight's");
      } else if (!ours.get(what).equals(expected.get(what))) {
        troubles.add("the database's " + what + " was changed");
      }
    }
    return new Troubles(troubles, tableLost);
  }

  private static Map<String, String> schema(Handle handle) {
    Map<String, String> found = new TreeMap<>();
    for (String query : List.of(SCHEMA, HISTORY)) {
      handle
          .select(query)
          .map((row, context) -> found.put(row.getString("what"), row.getString("how") + ""))
          .list();
    }
    return found;
  }

  private static Map<String, String> madeAnew() {
    try {
      Path folder = Files.createTempDirectory("leadlight-schema-");
      try (Database database = Database.open(folder)) {
        return database.read(SchemaCheck::schema);
      } finally {
        try (var files = Files.list(folder)) {
          for (Path file : files.toList()) {
            Files.delete(file);
          }
        }
        Files.delete(folder);
      }
    } catch (IOException e) {
      throw new UserError(
          "the temporary folder cannot be written, which verify needs; make room there, or name"
              + " another with TMPDIR");
    }
  }
}
