package leadlight.record;

import leadlight.model.FindingKind;
import leadlight.model.UserError;
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
    handle.execute(
        "INSERT INTO overrule (joint_id, verdict, finding, reason, person, given_at, zone)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        joint,
        overrule.verdict().id(),
        overrule.finding().map(FindingKind::id).orElse(null),
        overrule.reason(),
        overrule.person(),
        ScoringWriter.time(overrule.at()),
        overrule.at().getZone().getId());
    prove(EntryKind.OVERRULE);
  }

  void add(BenchResult result) {
    handle.execute(
        "INSERT INTO bench_result (joint_id, test, result, other_pin, person, taken_at, zone)"
            + " VALUES (?, ?, ?, ?, ?, ?, ?)",
        joint,
        result.test().id(),
        result.result(),
        result.otherPin().isPresent() ? result.otherPin().getAsInt() : null,
        result.person(),
        ScoringWriter.time(result.at()),
        result.at().getZone().getId());
    prove(EntryKind.BENCH_RESULT);
  }

  private void prove(EntryKind kind) {
    long id = handle.select("SELECT last_insert_rowid()").mapTo(Long.class).one();
    new Chain(handle).add(kind, id);
  }
}
