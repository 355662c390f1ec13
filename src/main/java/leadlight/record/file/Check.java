package leadlight.record.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import leadlight.data.Hash;
import leadlight.model.UserError;
import leadlight.record.engine.Engine;
import leadlight.record.engine.SharedSchema;
import org.jdbi.v3.core.Handle;

/** Looks whether the record is sound: the file, its references, its photos and results. */
public final class Check {

  private final Handle handle;
  private final List<String> troubles = new ArrayList<>();

  public Check(Handle handle) {
    this.handle = handle;
  }

  /** One line per trouble; none if all is sound. */
  public List<String> troubles(Optional<Seal> seal) {
    troubles.addAll(Engine.of(handle).troubles(handle));
    SchemaCheck.Troubles schema = SchemaCheck.troubles(handle);
    troubles.addAll(schema.lines());
    if (schema.tableLost()) {
      return troubles;
    }
    troubles.addAll(new ChainCheck(handle, true).troubles(seal));
    jointCounts();
    readings();
    files();
    return troubles;
  }

  private void jointCounts() {
    handle
        .select(
            "SELECT s.id, s.leads, count(j.id) AS joints FROM scoring s"
                + " LEFT JOIN joint j ON j.scoring_id = s.id WHERE s.row_reason IS NULL"
                + " GROUP BY s.id HAVING count(j.id) <> s.leads")
        .map(
            (row, context) ->
                "scoring %d has %d joints of %d"
                    .formatted(row.getLong("id"), row.getInt("joints"), row.getInt("leads")))
        .forEach(troubles::add);
  }

  /** Where the second reader was asked it has said something of every joint. */
  private void readings() {
    handle
        .select(
            "SELECT s.id, count(j.id) AS joints FROM scoring s"
                + " JOIN method m ON m.id = s.method_id JOIN joint j ON j.scoring_id = s.id"
                + " WHERE m.reader IS NOT NULL AND NOT EXISTS (SELECT 1 FROM opinion o"
                + " WHERE o.joint_id = j.id AND o.whose = 'reader') GROUP BY s.id")
        .map(
            (row, context) ->
                "scoring %d lacks the second reader's opinion on %d joints"
                    .formatted(row.getLong("id"), row.getInt("joints")))
        .forEach(troubles::add);
  }

  private void files() {
    handle
        .select(
            "SELECT s.id, s.photo_path, s.results, p.sha256 FROM scoring s"
                + " JOIN photo p ON p.id = s.photo_id ORDER BY s.id")
        .map(
            (row, context) -> {
              long id = row.getLong("id");
              photo(id, Path.of(row.getString("photo_path")), row.getString("sha256"));
              results(id, Path.of(row.getString("results")));
              return id;
            })
        .list();
  }

  private void photo(long scoring, Path photo, String sha256) {
    try {
      if (!Files.exists(photo)) {
        troubles.add("scoring " + scoring + ": the photo is gone: " + photo);
      } else if (!Hash.sha256(photo).equals(sha256)) {
        troubles.add("scoring " + scoring + ": the photo was changed: " + photo);
      }
    } catch (IOException e) {
      troubles.add("scoring " + scoring + ": the photo cannot be read: " + photo);
    }
  }

  private void results(long scoring, Path results) {
    if (!Files.exists(results)) {
      troubles.add("scoring " + scoring + ": its results are gone: " + results);
    }
  }

  /** Compares the tables, indexes and migrations with those of a record made anew. */
  private static final class SchemaCheck {

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
}
