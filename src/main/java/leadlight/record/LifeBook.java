package leadlight.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leadlight.data.JsonText;
import leadlight.record.book.Ids;
import leadlight.record.book.ScoringReader;
import leadlight.record.book.ScoringWriter;
import leadlight.record.file.Chain;
import leadlight.record.file.EntryKind;
import leadlight.record.said.LifeEvent;
import org.jdbi.v3.core.Handle;

/** Reads and writes boards' lives; runs within a transaction. */
final class LifeBook {

  private final Handle handle;

  LifeBook(Handle handle) {
    this.handle = handle;
  }

  void add(String job, String board, LifeEvent event) {
    long id =
        ScoringWriter.id(
            handle,
            "INSERT INTO life_event (board_id, kind, words, pins, is_good, person, said_at, zone)"
                + " VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
            new ScoringWriter(handle).board(job, board),
            event.kind().id(),
            event.words(),
            JsonText.of(event.pins()),
            event.good().map(good -> good ? 1 : 0).orElse(null),
            event.person(),
            ScoringWriter.time(event.at()),
            event.at().getZone().getId());
    new Chain(handle).add(EntryKind.LIFE_EVENT, id);
  }

  List<LifeEvent> read(String job, String board) {
    return handle
        .select(
            "SELECT e.* FROM life_event e JOIN board b ON b.id = e.board_id"
                + " JOIN job j ON j.id = b.job_id WHERE j.name = ? AND b.name = ? ORDER BY e.id",
            job,
            board)
        .map((row, context) -> event(row))
        .list();
  }

  List<JobRecord.BoardName> boards() {
    return handle
        .select(
            "SELECT j.name AS job, b.name AS board FROM board b JOIN job j ON j.id = b.job_id"
                + " ORDER BY j.id, b.id")
        .map(
            (row, context) -> new JobRecord.BoardName(row.getString("job"), row.getString("board")))
        .list();
  }

  private static LifeEvent event(ResultSet row) throws SQLException {
    boolean good = row.getBoolean("is_good");
    return new LifeEvent(
        Ids.of(LifeEvent.Kind.class, LifeEvent.Kind::id, row.getString("kind")),
        row.getString("words"),
        Arrays.asList(JsonText.read(row.getString("pins"), Integer[].class)),
        row.getObject("is_good") == null ? Optional.empty() : Optional.of(good),
        row.getString("person"),
        ScoringReader.time(row.getString("said_at"), row.getString("zone")));
  }
}
