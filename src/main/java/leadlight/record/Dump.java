package leadlight.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.data.JsonText;
import leadlight.model.UserError;
import org.jdbi.v3.core.Handle;

/**
 * All rows of all tables as lines of JSON: a line with schema and seal, then a line a row. What is
 * read back proves itself by the same seal.
 */
final class Dump {

  private static final String TABLES =
      "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
          + " AND name NOT LIKE 'flyway_%' ORDER BY name";

  private final Handle handle;

  Dump(Handle handle) {
    this.handle = handle;
  }

  /** The first line. */
  record Head(int schema, String seal) {}

  /** Any other line: columns without a value are left out. */
  record Row(String table, Map<String, Object> row) {}

  void write(OutputStream out, Seal seal) throws IOException {
    try (JsonGenerator lines = new JsonFactory().createGenerator(out)) {
      lines.setRootValueSeparator(null);
      lines.writeRaw(JsonText.of(new Head(schema(), seal.toString())) + "\n");
      for (String table : tables()) {
        List<IOException> troubles = new ArrayList<>();
        handle
            .select("SELECT * FROM " + table)
            .map(
                (row, context) -> {
                  try {
                    lines.writeRaw(JsonText.of(new Row(table, values(row))) + "\n");
                  } catch (IOException e) {
                    troubles.add(e);
                  }
                  return table;
                })
            .list();
        if (!troubles.isEmpty()) {
          throw troubles.get(0);
        }
      }
    }
  }

  /** Takes all rows into a record that holds none; its seal as the first line says it. */
  Seal read(BufferedReader lines, String name) throws IOException {
    Head head = parse(lines.readLine(), Head.class, name, 1);
    if (head.schema() != schema()) {
      throw new UserError(
          name + " was written by another version of Leadlight; import it with that one");
    }
    List<String> tables = tables();
    Collections.reverse(tables);
    handle.execute("PRAGMA defer_foreign_keys = ON");
    handle.execute("DELETE FROM entry");
    handle.execute("DELETE FROM sqlite_sequence");
    int number = 1;
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      Row row = parse(line, Row.class, name, ++number);
      if (!tables.contains(row.table())) {
        throw broken(name, number);
      }
      insert(row, name, number);
    }
    return Seal.parse(head.seal());
  }

  private void insert(Row row, String name, int number) {
    List<String> known =
        handle
            .select("SELECT name FROM pragma_table_info(?)", row.table())
            .mapTo(String.class)
            .list();
    if (row.row().isEmpty() || !known.containsAll(row.row().keySet())) {
      throw broken(name, number);
    }
    handle.execute(
        "INSERT INTO "
            + row.table()
            + " ("
            + String.join(", ", row.row().keySet())
            + ") VALUES ("
            + String.join(", ", Collections.nCopies(row.row().size(), "?"))
            + ")",
        row.row().values().toArray());
  }

  private static <T> T parse(String line, Class<T> type, String name, int number) {
    if (line == null) {
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
    return new ArrayList<>(handle.select(TABLES).mapTo(String.class).list());
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
