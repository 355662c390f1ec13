package leadlight.record.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.data.Hash;
import leadlight.record.engine.Engine;
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
}
