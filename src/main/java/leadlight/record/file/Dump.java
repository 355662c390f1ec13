package leadlight.record.file;

import com.fasterxml.jackson.annotation.JsonProperty;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leadlight.data.JsonText;
import leadlight.model.UserError;
import leadlight.record.engine.Engine;
import leadlight.record.engine.RecordPlace;
import org.jdbi.v3.core.Handle;

/**
 * All rows of all tables as lines of JSON: a line with schema and seal, then a line a row. What is
 * read back proves itself by the same seal.
 */
public final class Dump {

  private final Handle handle;
  private final Engine engine;

  Dump(Handle handle) {
    this.handle = handle;
    this.engine = Engine.of(handle);
  }

  /**
   * The first line.
   *
   * @param schema version of the tables
   * @param seal of the record
   * @param rows how many lines follow: what trainees said has no entry that would miss it
   */
  record Head(
      @JsonProperty(required = true) int schema,
      @JsonProperty(required = true) String seal,
      @JsonProperty(required = true) long rows) {}

  /** Any other line: columns without a value are left out. */
  record Row(
      @JsonProperty(required = true) String table,
      @JsonProperty(required = true) Map<String, Object> row) {}

  /** Writes a record as one moment of it: its seal and rows in one transaction. */
  public static void of(Database database, OutputStream out) throws IOException {
    try {
      database.moment(
          handle -> {
            try {
              new Dump(handle).write(out);
            } catch (IOException e) {
              throw new UncheckedIOException(e);
            }
            return null;
          });
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /** Makes a record of lines where there is none; nothing stays if they are not whole. */
  public static Seal into(RecordPlace place, BufferedReader lines, String name) throws IOException {
    boolean whole = false;
    try (Database made = Database.open(place)) {
      Seal seal =
          made.once(
              handle -> {
                try {
                  Dump dump = new Dump(handle);
                  // A record made anew has the beginning of its chain and no more.
                  if (dump.rows() > 1) {
                    throw taken(place);
                  }
                  return dump.read(lines, name);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
      whole = true;
      return seal;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    } catch (IllegalStateException e) {
      throw RowBatch.isRefused(e) ? notWhole(name, "its rows do not fit together") : e;
    } finally {
      if (!whole && place instanceof RecordPlace.Folder folder) {
        Files.deleteIfExists(folder.path().resolve(Database.FILE));
      }
    }
  }

  /** That an import wants a place for itself. */
  public static UserError taken(RecordPlace place) {
    return new UserError(place + " holds a record already; name a place for this one alone");
  }

  private void write(OutputStream out) throws IOException {
    try (JsonGenerator lines = new JsonFactory().createGenerator(out)) {
      lines.setRootValueSeparator(null);
      String seal = new Chain(handle).seal().toString();
      lines.writeRaw(JsonText.of(new Head(schema(), seal, rows())) + "\n");
      for (String table : tables()) {
        handle
            .select("SELECT * FROM " + table + " ORDER BY " + key(table))
            .setFetchSize(RowBatch.SIZE)
            .map((row, context) -> JsonText.of(new Row(table, values(row))))
            .forEach(line -> writeRaw(lines, line + "\n"));
      }
    }
  }

  /** Tables have a number, or else their first two columns. */
  private String key(String table) {
    List<String> columns = engine.columns(handle, table);
    return columns.contains("id") || columns.size() == 1 ? "1" : "1, 2";
  }

  private static void writeRaw(JsonGenerator lines, String text) {
    try {
      lines.writeRaw(text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private long rows() {
    return tables().stream()
        .mapToLong(table -> handle.select("SELECT count(*) FROM " + table).mapTo(Long.class).one())
        .sum();
  }

  /** Takes all rows into a record that holds none; its seal as the first line says it. */
  private Seal read(BufferedReader lines, String name) throws IOException {
    Head head = parse(lines.readLine(), Head.class, name, 1);
    if (head.schema() != schema()) {
      throw new UserError(
          name + " was written by another version of Leadlight; import it with that one");
    }
    Seal seal =
        Optional.ofNullable(head.seal()).flatMap(Seal::of).orElseThrow(() -> broken(name, 1));
    // Asked once: a server is far away.
    Map<String, Set<String>> columns = new HashMap<>();
    tables().forEach(table -> columns.put(table, Set.copyOf(engine.columns(handle, table))));
    engine.beginImport(handle);
    RowBatch rows = new RowBatch(handle);
    int number = 1;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      Row row = parse(line, Row.class, name, ++number);
      if (row.row() == null
          || row.row().isEmpty()
          || !columns.getOrDefault(row.table(), Set.of()).containsAll(row.row().keySet())) {
        throw broken(name, number);
      }
      rows.add(row.table(), row.row());
    }
    rows.send();
    engine.endImport(handle);
    prove(head, seal, number - 1, name);
    return seal;
  }

  /** Every row must be the one that the chain says; its files may lie elsewhere by now. */
  private void prove(Head head, Seal seal, int lines, String name) {
    if (lines != head.rows()) {
      throw notWhole(name, "it has %d lines of %d behind its first".formatted(lines, head.rows()));
    }
    if (!new Chain(handle).seal().equals(seal)) {
      throw notWhole(name, "its rows do not give its seal");
    }
    List<String> troubles = new ChainCheck(handle, false).troubles(Optional.of(seal));
    if (!troubles.isEmpty()) {
      throw notWhole(name, troubles.get(0));
    }
  }

  private static UserError notWhole(String name, String why) {
    return new UserError(name + " is not whole: " + why + "; export again");
  }

  private static <T> T parse(String line, Class<T> type, String name, int number) {
    if (line == null || line.isBlank()) {
      throw broken(name, number);
    }
    try {
      return JsonText.read(line, type);
    } catch (IllegalArgumentException e) {
      throw broken(name, number);
    }
  }

  private static UserError broken(String name, int line) {
    return new UserError(
        name + ", line " + line + ", is none that \"leadlight record export\" wrote; export again");
  }

  private int schema() {
    return handle
        .select("SELECT max(CAST(version AS INTEGER)) FROM flyway_schema_history")
        .mapTo(Integer.class)
        .one();
  }

  private List<String> tables() {
    return engine.tables(handle);
  }

  private static Map<String, Object> values(ResultSet row) throws SQLException {
    ResultSetMetaData columns = row.getMetaData();
    Map<String, Object> values = new LinkedHashMap<>();
    for (int i = 1; i <= columns.getColumnCount(); i++) {
      Object value = row.getObject(i);
      if (value != null) {
        values.put(columns.getColumnName(i), value);
      }
    }
    return values;
  }
}
