package leadlight.record.book;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.Overrule;
import leadlight.record.said.TakenBack;
import org.jdbi.v3.core.Handle;

/**
 * What people and the bench said of the joints of a row. It was said of the joints, not of a
 * picture: what stands holds for every photo of that row of the board at that stage and attempt.
 */
public final class SaidBook {

  /** Of the same board, stage, attempt and row as one scoring. */
  private static final String SAME_ROW =
      " JOIN joint j ON j.id = x.joint_id JOIN scoring s ON s.id = j.scoring_id"
          + " JOIN scoring my ON my.id = ? WHERE s.board_id = my.board_id AND s.stage = my.stage"
          + " AND s.attempt = my.attempt AND s.connector = my.connector AND s.leads = my.leads"
          + " AND s.port IS NOT DISTINCT FROM my.port"
          + " ORDER BY x.id";

  private static final String BACK =
      "SELECT x.*, j.pin, t.reason AS back_reason, t.person AS back_person, t.taken_back_at,"
          + " t.zone AS back_zone FROM ";

  private final Map<Integer, List<Overrule>> overrules = new TreeMap<>();
  private final Map<Integer, List<BenchResult>> bench = new TreeMap<>();
  private final Map<Integer, List<TakenBack>> takenBack = new TreeMap<>();

  private SaidBook() {}

  /** Whether people or the bench said anything of the row, taken back or not. */
  public static boolean isAnything(Handle handle, long scoring) {
    return anyOf(handle, "overrule", scoring) || anyOf(handle, "bench_result", scoring);
  }

  private static boolean anyOf(Handle handle, String table, long scoring) {
    return handle
        .select("SELECT EXISTS (SELECT 1 FROM " + table + " x" + SAME_ROW + ")", scoring)
        .mapTo(Boolean.class)
        .one();
  }

  static SaidBook read(Handle handle, long scoring) {
    SaidBook book = new SaidBook();
    handle
        .select(
            BACK + "overrule x LEFT JOIN taken_back t ON t.overrule_id = x.id" + SAME_ROW, scoring)
        .map((row, context) -> book.opinion(row))
        .list();
    handle
        .select(
            BACK + "bench_result x LEFT JOIN taken_back t ON t.bench_result_id = x.id" + SAME_ROW,
            scoring)
        .map((row, context) -> book.benchResult(row))
        .list();
    return book;
  }

  List<Overrule> overrules(int pin) {
    return overrules.getOrDefault(pin, List.of());
  }

  /** A meter between two pins is of both. */
  List<BenchResult> bench(int pin) {
    return bench.getOrDefault(pin, List.of());
  }

  List<TakenBack> takenBack(int pin) {
    return takenBack.getOrDefault(pin, List.of());
  }

  private Overrule opinion(ResultSet row) throws SQLException {
    Overrule opinion =
        new Overrule(
            Ids.of(Verdict.class, Verdict::id, row.getString("verdict")),
            Optional.ofNullable(row.getString("finding"))
                .map(id -> Ids.of(FindingKind.class, FindingKind::id, id)),
            row.getString("reason"),
            row.getString("person"),
            ScoringReader.time(row.getString("given_at"), row.getString("zone")));
    if (isBack(row)) {
      add(takenBack, row.getInt("pin"), back(row, Optional.of(opinion), Optional.empty()));
    } else {
      add(overrules, row.getInt("pin"), opinion);
    }
    return opinion;
  }

  private BenchResult benchResult(ResultSet row) throws SQLException {
    int pin = row.getInt("pin");
    int other = row.getInt("other_pin");
    BenchResult result = result(row, other);
    if (isBack(row)) {
      add(takenBack, pin, back(row, Optional.empty(), Optional.of(result)));
      if (other != 0) {
        add(takenBack, other, back(row, Optional.empty(), Optional.of(result(row, pin))));
      }
    } else {
      add(bench, pin, result);
      if (other != 0) {
        add(bench, other, result(row, pin));
      }
    }
    return result;
  }

  private static BenchResult result(ResultSet row, int other) throws SQLException {
    return new BenchResult(
        Ids.of(BenchTest.class, BenchTest::id, row.getString("test")),
        row.getString("result"),
        other == 0 ? OptionalInt.empty() : OptionalInt.of(other),
        row.getString("person"),
        ScoringReader.time(row.getString("taken_at"), row.getString("zone")));
  }

  private static boolean isBack(ResultSet row) throws SQLException {
    return row.getString("taken_back_at") != null;
  }

  private static TakenBack back(
      ResultSet row, Optional<Overrule> opinion, Optional<BenchResult> result) throws SQLException {
    return new TakenBack(
        opinion,
        result,
        row.getString("back_reason"),
        row.getString("back_person"),
        ScoringReader.time(row.getString("taken_back_at"), row.getString("back_zone")));
  }

  private static <T> void add(Map<Integer, List<T>> lists, int pin, T said) {
    lists.computeIfAbsent(pin, key -> new ArrayList<>()).add(said);
  }
}
