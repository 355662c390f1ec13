package leadlight.record;

import static java.util.stream.Collectors.joining;

import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.UserError;
import leadlight.record.book.ScoringWriter;
import leadlight.record.book.TallyBook;
import leadlight.record.file.Chain;
import leadlight.record.file.EntryKind;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import org.jdbi.v3.core.Handle;

/** What people and the bench say of one joint. */
final class JointBook {

  private final Handle handle;
  private final long joint;

  JointBook(Handle handle, long scoring, int pin) {
    this.handle = handle;
    this.joint =
        handle
            .select("SELECT id FROM joint WHERE scoring_id = ? AND pin = ?", scoring, pin)
            .mapTo(Long.class)
            .findOne()
            .orElseThrow(
                () ->
                    new UserError(
                        "scoring "
                            + scoring
                            + " has no pin "
                            + pin
                            + "; \"leadlight record\" lists the scorings"));
  }

  void add(Overrule overrule) {
    say(
        EntryKind.OVERRULE,
        "INSERT INTO overrule (joint_id, verdict, finding, reason, person, given_at, zone)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        joint,
        overrule.verdict().id(),
        overrule.finding().map(FindingKind::id).orElse(null),
        overrule.reason(),
        overrule.person(),
        ScoringWriter.time(overrule.at()),
        overrule.at().getZone().getId());
  }

  void add(BenchResult result) {
    result.otherPin().ifPresent(this::check);
    say(
        EntryKind.BENCH_RESULT,
        "INSERT INTO bench_result (joint_id, test, result, other_pin, person, taken_at, zone)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        joint,
        result.test().id(),
        result.result(),
        result.otherPin().isPresent() ? result.otherPin().getAsInt() : null,
        result.person(),
        ScoringWriter.time(result.at()),
        result.at().getZone().getId());
  }

  /** The meter's other probe is at another pin of the same row. */
  private void check(int otherPin) {
    boolean there =
        handle
            .select(
                "SELECT count(*) AS n FROM joint o JOIN joint j ON j.scoring_id = o.scoring_id"
                    + " WHERE j.id = ? AND o.id <> j.id AND o.pin = ?",
                joint,
                otherPin)
            .map((row, context) -> row.getInt("n") > 0)
            .one();
    if (!there) {
      throw new UserError("the row has no other pin " + otherPin + " for the meter");
    }
  }

  /** Takes back the last opinion that stands. */
  void takeBackOverrule(JobRecord.Withdrawal why) {
    takeBack("overrule", "j.pin = mine.pin", why);
  }

  /** Takes back the last result of some tests that stands; a meter between two pins is of both. */
  void takeBackBench(Set<BenchTest> tests, JobRecord.Withdrawal why) {
    String ids = tests.stream().map(test -> "'" + test.id() + "'").collect(joining(", "));
    takeBack(
        "bench_result",
        "(j.pin = mine.pin OR x.other_pin = mine.pin) AND x.test IN (" + ids + ")",
        why);
  }

  private void takeBack(String table, String which, JobRecord.Withdrawal why) {
    long last =
        handle
            .select(
                ("SELECT max(x.id) AS last FROM %s x JOIN joint j ON j.id = x.joint_id"
                        + " JOIN scoring s ON s.id = j.scoring_id JOIN joint mine ON mine.id = ?"
                        + " JOIN scoring my ON my.id = mine.scoring_id"
                        + " WHERE s.board_id = my.board_id AND s.stage = my.stage"
                        + " AND s.attempt = my.attempt AND s.connector = my.connector"
                        + " AND s.leads = my.leads AND s.port IS NOT DISTINCT FROM my.port AND %s AND x.id NOT IN"
                        + " (SELECT %s_id FROM taken_back WHERE %s_id IS NOT NULL)")
                    .formatted(table, which, table, table),
                joint)
            .map((row, context) -> row.getLong("last"))
            .one();
    if (last == 0) {
      throw new UserError(
          "nothing stands at this pin that could be taken back;"
              + " \"leadlight record show\" lists what was said");
    }
    say(
        EntryKind.TAKEN_BACK,
        "INSERT INTO taken_back (%s_id, reason, person, taken_back_at, zone) VALUES (?, ?, ?, ?, ?)"
            .formatted(table),
        last,
        why.reason(),
        why.person(),
        ScoringWriter.time(why.at()),
        why.at().getZone().getId());
  }

  private void say(EntryKind kind, String sql, Object... values) {
    long board =
        handle
            .select(
                "SELECT s.board_id FROM scoring s JOIN joint j ON j.scoring_id = s.id"
                    + " WHERE j.id = ?",
                joint)
            .mapTo(Long.class)
            .one();
    new TallyBook(handle)
        .around(
            board,
            () -> {
              long id = ScoringWriter.id(handle, sql, values);
              new Chain(handle).add(kind, id);
              return id;
            });
  }
}
