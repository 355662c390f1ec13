package leadlight.record.engine;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What is said differently on either engine, once a connection is open. */
public enum Engine {
  /** One file. */
  SQLITE {
    @Override
    public Optional<String> text(ResultSet row, int column) throws SQLException {
      return Optional.ofNullable(row.getString(column));
    }

    @Override
    public List<String> troubles(Handle handle) {
      List<String> troubles = new ArrayList<>();
      for (String line : handle.select("PRAGMA integrity_check").mapTo(String.class).list()) {
        if (!line.equals("ok")) {
          troubles.add("the database file is damaged: " + line);
        }
      }
      handle
          .select("PRAGMA foreign_key_check")
          .map((row, context) -> row.getString("table") + " row " + row.getLong("rowid"))
          .forEach(place -> troubles.add(NOT_THERE + place));
      return troubles;
    }

    @Override
    public long entriesEver(Handle handle) {
      return handle
          .select("SELECT seq FROM sqlite_sequence WHERE name = 'entry'")
          .mapTo(Long.class)
          .findOne()
          .orElse(0L);
    }

    @Override
    public List<String> tables(Handle handle) {
      return handle
          .select(
              "SELECT name FROM sqlite_master WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                  + " AND name NOT LIKE 'flyway_%' AND name NOT IN ('tally', 'counted')"
                  + " ORDER BY name")
          .mapTo(String.class)
          .list();
    }

    @Override
    public List<String> columns(Handle handle, String table) {
      return handle
          .select("SELECT name FROM pragma_table_info(?)", table)
          .mapTo(String.class)
          .list();
    }

    @Override
    public void beginImport(Handle handle) {
      handle.execute("PRAGMA defer_foreign_keys = ON");
      handle.execute("DELETE FROM entry");
      handle.execute("DELETE FROM counted");
      handle.execute("DELETE FROM sqlite_sequence");
    }

    @Override
    public void endImport(Handle handle) {}

    @Override
    public void beginErasing(Handle handle) {
      handle.execute("PRAGMA secure_delete = ON");
    }
  },

  /** A server. */
  POSTGRESQL {
    @Override
    public Optional<String> text(ResultSet row, int column) throws SQLException {
      if (row.getMetaData().getColumnType(column) != Types.DOUBLE) {
        return Optional.ofNullable(row.getString(column));
      }
      double value = row.getDouble(column);
      return row.wasNull() ? Optional.empty() : Optional.of(Reals.text(value));
    }

    /** Pages and indexes are the server's own to check; that rows refer to rows, ours too. */
    @Override
    public List<String> troubles(Handle handle) {
      List<String> troubles = new ArrayList<>();
      handle
          .select(
              "SELECT child.relname AS child, a.attname AS name, parent.relname AS parent"
                  + " FROM pg_constraint c JOIN pg_class child ON child.oid = c.conrelid"
                  + " JOIN pg_class parent ON parent.oid = c.confrelid"
                  + " JOIN pg_attribute a ON a.attrelid = c.conrelid AND a.attnum = c.conkey[1]"
                  + " WHERE c.contype = 'f' AND child.relnamespace = current_schema()::regnamespace"
                  + " ORDER BY 1, 2")
          .map(
              (row, context) ->
                  List.of(row.getString("child"), row.getString("name"), row.getString("parent")))
          .list()
          .forEach(it -> lost(handle, it, troubles));
      return troubles;
    }

    private void lost(Handle handle, List<String> reference, List<String> troubles) {
      long lost =
          handle
              .select(
                  "SELECT count(*) FROM %1$s c WHERE c.%2$s IS NOT NULL AND NOT EXISTS"
                          .formatted(reference.get(0), reference.get(1))
                      + " (SELECT 1 FROM %s p WHERE p.id = c.%s)"
                          .formatted(reference.get(2), reference.get(1)))
              .mapTo(Long.class)
              .one();
      if (lost > 0) {
        troubles.add(NOT_THERE + reference.get(0) + ", " + lost + " rows");
      }
    }

    @Override
    public long entriesEver(Handle handle) {
      return handle.select("SELECT entries FROM chain_end").mapTo(Long.class).one();
    }

    @Override
    public List<String> tables(Handle handle) {
      return handle
          .select(
              "SELECT relname FROM pg_class WHERE relkind = 'r'"
                  + " AND relnamespace = current_schema()::regnamespace"
                  + " AND relname NOT LIKE 'flyway_%'"
                  + " AND relname NOT IN ('chain_end', 'writer_mark', 'tally', 'counted') ORDER BY relname")
          .mapTo(String.class)
          .list();
    }

    @Override
    public List<String> columns(Handle handle, String table) {
      return handle
          .select(
              "SELECT attname FROM pg_attribute WHERE attrelid = CAST(? AS regclass)"
                  + " AND attnum > 0 AND NOT attisdropped ORDER BY attnum",
              table)
          .mapTo(String.class)
          .list();
    }

    @Override
    public void beginImport(Handle handle) {
      handle.execute("SET CONSTRAINTS ALL DEFERRED");
      handle.execute("DELETE FROM entry");
      handle.execute("DELETE FROM counted");
      handle.execute("UPDATE chain_end SET entries = 0");
    }

    /** Numbers go on behind those that came with the rows. */
    @Override
    public void endImport(Handle handle) {
      handle
          .select(
              "SELECT c.relname FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid"
                  + " WHERE a.attidentity <> '' AND c.relkind = 'r'"
                  + " AND c.relnamespace = current_schema()::regnamespace ORDER BY 1")
          .mapTo(String.class)
          .list()
          .forEach(
              table ->
                  handle
                      .select(
                          "SELECT setval(pg_get_serial_sequence('%1$s', 'id'), coalesce(max(id), 1),"
                                  .formatted(table)
                              + " max(id) IS NOT NULL) FROM "
                              + table)
                      .mapTo(Long.class)
                      .one());
    }

    /** The server overwrites the place when it is vacuumed: docs/record.md. */
    @Override
    public void beginErasing(Handle handle) {}
  };

  private static final String NOT_THERE = "refers to something that is not there: ";

  /** The engine of an open connection. */
  public static Engine of(Handle handle) {
    try {
      String name = handle.getConnection().getMetaData().getDatabaseProductName();
      return name.equals("PostgreSQL") ? POSTGRESQL : SQLITE;
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  /** A value as text that is the same on both engines; empty if there is none. */
  public abstract Optional<String> text(ResultSet row, int column) throws SQLException;

  /** What the engine itself finds wrong, a line each. */
  public abstract List<String> troubles(Handle handle);

  /** Number of the last entry of the chain that was ever written. */
  public abstract long entriesEver(Handle handle);

  /** Names of the tables that hold the record: not of those that can be made of these anew. */
  public abstract List<String> tables(Handle handle);

  /** Names of a table's columns. */
  public abstract List<String> columns(Handle handle, String table);

  /** Makes room for all rows of another record, in any order, within a transaction. */
  public abstract void beginImport(Handle handle);

  /** Ends what {@link #beginImport} began. */
  public abstract void endImport(Handle handle);

  /** What is deleted from here on is overwritten too, where the engine can. */
  public abstract void beginErasing(Handle handle);
}
