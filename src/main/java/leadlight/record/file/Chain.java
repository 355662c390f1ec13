package leadlight.record.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.data.Hash;
import leadlight.data.JsonText;
import leadlight.record.engine.Engine;
import org.jdbi.v3.core.Handle;

/**
 * Writes the chain; runs within the transaction of what it proves.
 *
 * <p>Content is hashed as text: of each row all columns that are not empty, by name, each with the
 * length of its value before it. So a column that a later version adds, empty in older rows,
 * changes no hash.
 */
public final class Chain {

  /** The first entry: how many rows there were before the chain was begun. */
  static final String BEGUN = "begun";

  private static final String NO_HASH = "0".repeat(64);

  /** What the report writer puts behind a photo's name; pages are made from the same. */
  private static final List<String> PROVEN_FILES = List.of(".json", ".csv", ".annotated.png");

  /** In place of the hash of a file that is there and cannot be read. */
  static final String UNREADABLE = "unreadable";

  private final Handle handle;
  private final Engine engine;

  public Chain(Handle handle) {
    this.handle = handle;
    this.engine = Engine.of(handle);
  }

  /** One entry. */
  record Entry(
      long id, String kind, long ref, String at, String content, String files, String hash) {

    /** What its hash must be behind another. */
    String hashAfter(String before) {
      return sha256(String.join("\n", before, "" + id, kind, "" + ref, at, content, files));
    }
  }

  /** Begins the chain of a record that has none, with all that is in it. */
  void begin() {
    if (!entries().isEmpty()) {
      return;
    }
    long before = 0;
    for (EntryKind kind : EntryKind.values()) {
      before += rows(kind).size();
    }
    append(BEGUN, before, "", NO_HASH, "{}");
    for (EntryKind kind : EntryKind.values()) {
      rows(kind).forEach(ref -> add(kind, ref));
    }
  }

  /** Adds what has just been written. */
  public void add(EntryKind kind, long ref) {
    String at =
        handle
            .select("SELECT " + kind.time() + " FROM " + kind.table() + " WHERE id = ?", ref)
            .mapTo(String.class)
            .one();
    append(kind.table(), ref, at, content(kind, ref).orElseThrow(), JsonText.of(files(kind, ref)));
  }

  private void append(String kind, long ref, String at, String content, String files) {
    Optional<Entry> last =
        handle
            .select("SELECT * FROM entry ORDER BY id DESC LIMIT 1")
            .map((row, context) -> entry(row))
            .findOne();
    long id = last.map(Entry::id).orElse(0L) + 1;
    Entry entry = new Entry(id, kind, ref, at, content, files, "");
    handle.execute(
        "INSERT INTO entry (id, kind, ref, at, content, files, hash) VALUES (?, ?, ?, ?, ?, ?, ?)",
        id,
        kind,
        ref,
        at,
        content,
        files,
        entry.hashAfter(last.map(Entry::hash).orElse(NO_HASH)));
  }

  /** Number and hash of the last entry. */
  public Seal seal() {
    return handle
        .select("SELECT id, hash FROM entry ORDER BY id DESC LIMIT 1")
        .map((row, context) -> new Seal(row.getLong("id"), row.getString("hash")))
        .findOne()
        .orElse(new Seal(0, NO_HASH));
  }

  List<Entry> entries() {
    return handle
        .select("SELECT * FROM entry ORDER BY id")
        .map((row, context) -> entry(row))
        .list();
  }

  /** Numbers of the rows that must stand in the chain. */
  List<Long> rows(EntryKind kind) {
    return handle
        .select("SELECT id FROM " + kind.table() + " WHERE " + kind.complete() + " ORDER BY id")
        .mapTo(Long.class)
        .list();
  }

  /** Hash of all that belongs to a row; empty if it is gone. */
  Optional<String> content(EntryKind kind, long ref) {
    StringBuilder text = new StringBuilder();
    for (String query : kind.content()) {
      int before = text.length();
      handle
          .select(query, ref)
          .map((row, context) -> text.append(row(row)).append('\n').length())
          .list();
      if (text.length() == before && query.equals(kind.content().get(0))) {
        return Optional.empty();
      }
      text.append(";\n");
    }
    return Optional.of(sha256(text.toString()));
  }

  /** Hash by name of the files that hold a scoring's results, as they are now. */
  private Map<String, String> files(EntryKind kind, long ref) {
    return kind == EntryKind.SCORING ? files(results(ref)) : Map.of();
  }

  Path results(long scoring) {
    return Path.of(
        handle
            .select("SELECT results FROM scoring WHERE id = ?", scoring)
            .mapTo(String.class)
            .one());
  }

  /** The files of a report that are there: its own names, no file of another photo's. */
  public static Map<String, String> files(Path report) {
    Map<String, String> hashes = new TreeMap<>();
    for (String name : names(report)) {
      Path file = report.resolveSibling(name);
      if (Files.exists(file)) {
        hashes.put(name, hash(file));
      }
    }
    return hashes;
  }

  /** Names of a report's files. */
  static List<String> names(Path report) {
    String stem = report.getFileName().toString().replaceFirst("\\.json$", "");
    return PROVEN_FILES.stream().map(ending -> stem + ending).toList();
  }

  private static String hash(Path file) {
    try {
      return Hash.sha256(file);
    } catch (IOException e) {
      return UNREADABLE;
    }
  }

  private String row(ResultSet row) throws SQLException {
    ResultSetMetaData columns = row.getMetaData();
    Map<String, String> values = new TreeMap<>();
    for (int i = 1; i <= columns.getColumnCount(); i++) {
      String name = columns.getColumnLabel(i);
      engine.text(row, i).ifPresent(value -> values.put(name, value));
    }
    StringBuilder text = new StringBuilder();
    values.forEach(
        (name, value) ->
            text.append(name).append('=').append(value.length()).append(':').append(value));
    return text.toString();
  }

  private static Entry entry(ResultSet row) throws SQLException {
    return new Entry(
        row.getLong("id"),
        row.getString("kind"),
        row.getLong("ref"),
        row.getString("at"),
        row.getString("content"),
        row.getString("files"),
        row.getString("hash"));
  }

  private static String sha256(String text) {
    return Hash.sha256(text.getBytes(StandardCharsets.UTF_8));
  }

  static String first() {
    return NO_HASH;
  }
}
