package leadlight.record.file;

import java.util.List;

/**
 * What the chain proves. To add a kind: its table, when it was said, and the queries that give all
 * that belongs to it; then call {@link Chain#add} where a row of it is written.
 */
public enum EntryKind {
  /** A scoring with all that it rests on. */
  SCORING(
      "scoring",
      "scored_at",
      "TRUE",
      List.of(
          "SELECT s.*, b.name AS board, j.name AS job FROM scoring s JOIN board b"
              + " ON b.id = s.board_id JOIN job j ON j.id = b.job_id WHERE s.id = ?",
          "SELECT p.* FROM photo p JOIN scoring s ON s.photo_id = p.id WHERE s.id = ?",
          "SELECT m.* FROM method m JOIN scoring s ON s.method_id = m.id WHERE s.id = ?",
          "SELECT * FROM joint WHERE scoring_id = ? ORDER BY pin",
          "SELECT m.* FROM measure m JOIN joint j ON j.id = m.joint_id WHERE j.scoring_id = ?"
              + " ORDER BY j.pin, m.name",
          "SELECT f.* FROM finding f JOIN joint j ON j.id = f.joint_id WHERE j.scoring_id = ?"
              + " ORDER BY f.id",
          "SELECT o.* FROM opinion o JOIN joint j ON j.id = o.joint_id WHERE j.scoring_id = ?"
              + " ORDER BY j.pin, o.whose")),
  /** A person's opinion. */
  OVERRULE("overrule", "given_at", "TRUE", List.of("SELECT * FROM overrule WHERE id = ?")),
  /** What the bench said. */
  BENCH_RESULT(
      "bench_result", "taken_at", "TRUE", List.of("SELECT * FROM bench_result WHERE id = ?")),
  /** An opinion or a bench result that was withdrawn. */
  TAKEN_BACK(
      "taken_back", "taken_back_at", "TRUE", List.of("SELECT * FROM taken_back WHERE id = ?")),
  /** What a board's life has beside photos, its hand-back among it. */
  LIFE_EVENT(
      "life_event",
      "said_at",
      "TRUE",
      List.of(
          "SELECT e.*, b.name AS board, j.name AS job FROM life_event e JOIN board b"
              + " ON b.id = e.board_id JOIN job j ON j.id = b.job_id WHERE e.id = ?")),
  /** A run that came to its end, with what became of its photos. */
  RUN(
      "run",
      "ended_at",
      "ended_at IS NOT NULL",
      List.of(
          "SELECT * FROM run WHERE id = ?",
          "SELECT * FROM run_photo WHERE run_id = ? ORDER BY id"));

  private final String table;
  private final String time;
  private final String complete;
  private final List<String> content;

  EntryKind(String table, String time, String complete, List<String> content) {
    this.table = table;
    this.time = time;
    this.complete = complete;
    this.content = content;
  }

  /** Its table, which is also its name in the chain. */
  String table() {
    return table;
  }

  /** The column that says when. */
  String time() {
    return time;
  }

  /** True of rows that must stand in the chain. */
  String complete() {
    return complete;
  }

  /** Queries by the row's number; the first gives nothing if it is gone. */
  List<String> content() {
    return content;
  }

  /** As people read it. */
  String words() {
    return table.replace('_', ' ');
  }
}
