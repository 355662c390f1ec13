package leadlight.record.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/**
 * The counts that charts are drawn from, kept up by whoever changes what is counted, within the
 * same transaction.
 */
public final class TallyBook {

  /** Raised when what counts changes, or how it is grouped: all records are then counted anew. */
  private static final int RULES = 1;

  /** Boards that are counted together; common practice, no source. */
  private static final int AT_ONCE = 500;

  private static final String KEY = "unit, scope, axis, name, verdicts, findings";

  private final Handle handle;

  public TallyBook(Handle handle) {
    this.handle = handle;
  }

  /** Does what changes what a board comes to, and changes the counts with it. */
  public <T> T around(long board, Supplier<T> change) {
    Map<Tally, Long> before = BoardTally.of(handle, board, board);
    T done = change.get();
    Map<Tally, Long> difference = BoardTally.of(handle, board, board);
    before.forEach((what, n) -> difference.merge(what, -n, Long::sum));
    difference.values().removeIf(n -> n == 0);
    add(difference);
    return done;
  }

  /** Whether all that is there was counted by today's rules. */
  public boolean isCounted() {
    return handle
        .select("SELECT count(*) FROM counted WHERE rules = ?", RULES)
        .map((row, context) -> row.getLong(1) == 1)
        .one();
  }

  /** Counts all boards anew unless somebody else just did. */
  public void countAll() {
    if (isCounted()) {
      return;
    }
    handle.execute("DELETE FROM tally");
    handle.execute("DELETE FROM counted");
    add(anew());
    handle.execute("INSERT INTO counted (rules) VALUES (?)", RULES);
  }

  private Map<Tally, Long> anew() {
    Map<Tally, Long> all = new HashMap<>();
    long last = handle.select("SELECT coalesce(max(id), 0) FROM board").mapTo(Long.class).one();
    for (long from = 0; from <= last; from += AT_ONCE) {
      BoardTally.of(handle, from, from + AT_ONCE - 1)
          .forEach((what, n) -> all.merge(what, n, Long::sum));
    }
    return all;
  }

  private void add(Map<Tally, Long> difference) {
    if (difference.isEmpty()) {
      return;
    }
    PreparedBatch batch =
        handle.prepareBatch(
            "INSERT INTO tally (%1$s, n) VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (%1$s)"
                    .formatted(KEY)
                + " DO UPDATE SET n = tally.n + excluded.n");
    difference.forEach((what, n) -> batch.add(values(what, n)));
    batch.execute();
    if (difference.values().stream().anyMatch(n -> n < 0)) {
      handle.execute("DELETE FROM tally WHERE n = 0");
    }
  }

  private static Object[] values(Tally what, long n) {
    return new Object[] {
      what.unit().id(),
      what.scope(),
      what.axis().map(Axis::id).orElse(""),
      what.name(),
      Tally.joined(what.verdicts()),
      Tally.joined(what.findings()),
      n
    };
  }

  /** The counts of one unit, scope and axis. */
  public Map<Tally, Long> read(Unit unit, String scope, Optional<Axis> axis) {
    return read(
        "SELECT * FROM tally WHERE unit = ? AND scope = ? AND axis = ?",
        unit.id(),
        scope,
        axis.map(Axis::id).orElse(""));
  }

  private Map<Tally, Long> read(String sql, Object... values) {
    Map<Tally, Long> counts = new HashMap<>();
    handle
        .select(sql, values)
        .map((row, context) -> counts.put(tally(row), row.getLong("n")))
        .list();
    return counts;
  }

  private static Tally tally(ResultSet row) throws SQLException {
    return new Tally(
        Ids.of(Unit.class, Unit::id, row.getString("unit")),
        row.getString("scope"),
        Axis.of(row.getString("axis")),
        row.getString("name"),
        Tally.apart(row.getString("verdicts")),
        Tally.apart(row.getString("findings")));
  }

  /** What is not as all boards, counted anew, come to; in a line. */
  public List<String> troubles() {
    return anew().equals(read("SELECT * FROM tally"))
        ? List.of()
        : List.of("the counts that charts are drawn from are not those of the joints");
  }
}
