package leadlight.record.engine;

import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionException;

/**
 * The tables of a shared record, beside those of one made anew: the migrations are applied once
 * more, to temporary tables of the same server, which are gone with the savepoint. Their history
 * was compared when the record was opened.
 */
public final class SharedSchema {

  private static final String SAVEPOINT = "schema";
  private static final String SCHEMA_NAME = "\\b(public|pg_temp|pg_temp_\\d+)\\.";

  private static final String SCHEMA =
      "WITH ours AS (SELECT oid, relname, relkind FROM pg_class"
          + " WHERE relnamespace = CAST(? AS oid) AND relname NOT LIKE 'flyway%')"
          + " SELECT 'table ' || relname AS what, '' AS how FROM ours WHERE relkind = 'r'"
          + " UNION ALL SELECT 'column ' || relname || '.' || attname,"
          + " concat_ws(' ', format_type(atttypid, atttypmod), attnotnull, attidentity,"
          + " attcollation::regcollation) FROM ours JOIN pg_attribute ON attrelid = ours.oid"
          + " WHERE relkind = 'r' AND attnum > 0 AND NOT attisdropped"
          + " UNION ALL SELECT 'constraint ' || relname || '.' || conname,"
          + " concat_ws(' ', pg_get_constraintdef(c.oid), convalidated)"
          + " FROM ours JOIN pg_constraint c ON conrelid = ours.oid"
          + " UNION ALL SELECT 'index ' || relname, pg_get_indexdef(oid) FROM ours"
          + " WHERE relkind = 'i'"
          + " UNION ALL SELECT 'trigger ' || relname || '.' || tgname,"
          + " concat_ws(' ', pg_get_triggerdef(t.oid), tgenabled)"
          + " FROM ours JOIN pg_trigger t ON tgrelid = ours.oid WHERE NOT tgisinternal"
          + " UNION ALL SELECT 'function ' || proname || ' '"
          + " || pg_get_function_identity_arguments(oid), prosrc FROM pg_proc"
          + " WHERE pronamespace = CAST(? AS oid)"
          + " AND proname IN ('json_valid', 'json_patch', 'note_chain_end')";

  private SharedSchema() {}

  /** What there is, each thing with how it is made. */
  public static Map<String, String> there(Handle handle) {
    return read(handle, "CAST(current_schema() AS regnamespace)");
  }

  /** What there would be in a record made anew; within a transaction. */
  public static Map<String, String> madeAnew(Handle handle) {
    handle.savepoint(SAVEPOINT);
    try {
      for (String script : new SharedMigrations().inOrder()) {
        execute(handle, script);
      }
      return read(handle, "pg_my_temp_schema()");
    } finally {
      handle.rollbackToSavepoint(SAVEPOINT);
    }
  }

  private static void execute(Handle handle, String script) {
    try (Statement statement = handle.getConnection().createStatement()) {
      statement.execute("SET LOCAL search_path TO pg_temp, public");
      statement.execute(script);
    } catch (SQLException e) {
      throw new TransactionException("a table cannot be made for comparison", e);
    }
  }

  private static Map<String, String> read(Handle handle, String schema) {
    long oid = handle.select("SELECT CAST(" + schema + " AS oid)").mapTo(Long.class).one();
    Map<String, String> found = new TreeMap<>();
    handle
        .select(SCHEMA, oid, oid)
        .map(
            (row, context) ->
                found.put(row.getString("what"), row.getString("how").replaceAll(SCHEMA_NAME, "")))
        .list();
    return found;
  }
}
