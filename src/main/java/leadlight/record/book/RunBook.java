package leadlight.record.book;

import java.nio.file.Path;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.stream.Stream;
import leadlight.record.file.Chain;
import leadlight.record.file.EntryKind;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.OpenRun;
import leadlight.record.scoring.RunPhoto;
import leadlight.record.scoring.RunStart;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import org.jdbi.v3.core.Handle;

/** Runs and what became of their photos. */
public final class RunBook {

  private final Handle handle;

  public RunBook(Handle handle) {
    this.handle = handle;
  }

  public long start(RunStart start) {
    return handle
        .select(
            "INSERT INTO run (folder, source, person, started_at, zone, tool_version)"
                + " VALUES (?, ?, ?, ?, ?, ?) RETURNING id",
            start.folder().toAbsolutePath().toString(),
            start.source(),
            start.person(),
            ScoringWriter.time(start.at()),
            start.at().getZone().getId(),
            start.toolVersion())
        .mapTo(Long.class)
        .one();
  }

  /** Folders of runs on a source that did not come to their end, the latest first. */
  public List<OpenRun> unfinished(String source) {
    return handle
        .select(
            "SELECT id, folder FROM run WHERE source = ? AND ended_at IS NULL"
                + " ORDER BY id DESC",
            source)
        .map((row, context) -> new OpenRun(row.getLong("id"), Path.of(row.getString("folder"))))
        .list();
  }

  public void end(long run, ZonedDateTime at) {
    handle.execute("UPDATE run SET ended_at = ? WHERE id = ?", ScoringWriter.time(at), run);
    new Chain(handle).add(EntryKind.RUN, run);
  }

  /** A scoring of this run, or the equal one of another. */
  public RunPhoto of(NewScoring scoring, long id, long run) {
    boolean ours =
        handle
            .select("SELECT run_id = ? FROM scoring WHERE id = ?", run, id)
            .mapTo(Boolean.class)
            .one();
    return new RunPhoto(
        scoring.photo(),
        scoring.subject(),
        scoring.method().key(),
        ours ? RunPhoto.Outcome.SCORED : RunPhoto.Outcome.UNCHANGED,
        OptionalLong.of(id),
        Optional.empty());
  }

  /** Sets what became of a photo; a run that goes on replaces what an earlier try said. */
  public void put(long run, RunPhoto photo) {
    Subject subject = photo.subject();
    handle.execute(
        "INSERT INTO run_photo (run_id, photo_path, job, board, stage, attempt,"
            + " method_key, outcome, scoring_id, message, port)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)"
            + " ON CONFLICT (run_id, photo_path, job, board, stage, attempt, method_key)"
            + " DO UPDATE SET outcome = excluded.outcome, scoring_id = excluded.scoring_id,"
            + " message = excluded.message, port = excluded.port",
        run,
        photo.photo().toAbsolutePath().toString(),
        subject.job(),
        subject.board(),
        subject.stage().id(),
        subject.attempt(),
        photo.methodKey(),
        photo.outcome().id(),
        photo.scoring().isPresent() ? photo.scoring().getAsLong() : null,
        photo.message().orElse(null),
        subject.port().orElse(null));
  }

  public void each(long run, Consumer<RunPhoto> take) {
    try (Stream<RunPhoto> photos =
        handle
            .select("SELECT * FROM run_photo WHERE run_id = ? ORDER BY photo_path, id", run)
            .map((row, context) -> photo(row))
            .stream()) {
      photos.forEach(take);
    }
  }

  private static RunPhoto photo(ResultSet row) throws SQLException {
    long scoring = row.getLong("scoring_id");
    return new RunPhoto(
        Path.of(row.getString("photo_path")),
        new Subject(
            row.getString("job"),
            row.getString("board"),
            Ids.of(Stage.class, Stage::id, row.getString("stage")),
            row.getInt("attempt"),
            Optional.ofNullable(row.getString("port"))),
        row.getString("method_key"),
        Ids.of(RunPhoto.Outcome.class, RunPhoto.Outcome::id, row.getString("outcome")),
        scoring == 0 ? OptionalLong.empty() : OptionalLong.of(scoring),
        Optional.ofNullable(row.getString("message")));
  }
}
