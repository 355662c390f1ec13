package leadlight.record.book;

import static java.util.stream.Collectors.counting;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toMap;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;
import org.jdbi.v3.core.Handle;

/** Counts what some boards come to for charts: the last scoring of each photo, as it stands. */
final class BoardTally {

  private static final List<Axis> OF_ONE_SCOPE =
      List.of(Axis.DAY, Axis.CONNECTOR, Axis.OPERATOR, Axis.PIN, Axis.FINDING);

  /** A stage and which time it was reached, as one number in their order. */
  private static final int ATTEMPTS = 1000;

  // In this order: a file's own planner, without statistics, may begin with all joints there are.
  private static final String JOINTS =
      " FROM scoring s CROSS JOIN joint j WHERE j.scoring_id = s.id"
          + " AND s.board_id BETWEEN ? AND ? ORDER BY j.scoring_id, j.pin";

  private static final String OF_JOINTS =
      " FROM scoring s CROSS JOIN joint j CROSS JOIN %s x WHERE j.scoring_id = s.id"
          + " AND x.joint_id = j.id AND s.board_id BETWEEN ? AND ?";

  private final Handle handle;
  private final long from;
  private final long to;
  private final Map<Tally, Long> counts = new HashMap<>();
  private final Map<OnBoard, Set<String>> onBoards = new HashMap<>();

  private BoardTally(Handle handle, long from, long to) {
    this.handle = handle;
    this.from = from;
    this.to = to;
  }

  private record Photo(
      long id,
      long board,
      Stage stage,
      int attempt,
      String day,
      String connector,
      String person,
      boolean found) {

    int when() {
      return ATTEMPTS * stage.ordinal() + attempt;
    }

    String name(Axis axis, int pin) {
      return switch (axis) {
        case DAY -> day;
        case CONNECTOR -> connector;
        case OPERATOR -> person;
        case PIN -> Integer.toString(pin);
        case STAGE -> stage.id() + " " + attempt;
        case FINDING -> "";
      };
    }
  }

  /** A joint as it counts. */
  private record Word(String verdict, List<String> findings) {}

  private record OnBoard(long board, String scope, Axis axis, String name) {}

  /** The counts of the boards whose numbers are in a range. */
  static Map<Tally, Long> of(Handle handle, long from, long to) {
    BoardTally tally = new BoardTally(handle, from, to);
    tally.count();
    return tally.counts;
  }

  private void count() {
    List<Photo> photos = photos();
    if (photos.isEmpty()) {
      return;
    }
    Map<Long, Integer> last = new HashMap<>();
    photos.forEach(photo -> last.merge(photo.board, photo.when(), Math::max));
    Map<Long, Map<Integer, Word>> words = words();
    Set<Long> said = said();
    for (Photo photo : photos) {
      boolean differs = said.contains(photo.board) && SaidBook.isAnything(handle, photo.id);
      Map<Integer, Word> joints =
          differs ? standing(photo.id) : words.getOrDefault(photo.id, Map.of());
      count(photo, Tally.ALL, List.of(Axis.STAGE), joints);
      count(photo, photo.stage.id(), OF_ONE_SCOPE, joints);
      if (photo.when() == last.get(photo.board)) {
        count(photo, Tally.LAST, OF_ONE_SCOPE, joints);
      }
    }
    onBoards.forEach(
        (place, verdicts) ->
            add(
                new Tally(
                    Unit.BOARD,
                    place.scope,
                    Optional.of(place.axis),
                    place.name,
                    List.copyOf(verdicts),
                    List.of()),
                1));
  }

  private void count(Photo photo, String scope, List<Axis> axes, Map<Integer, Word> joints) {
    String found = photo.found ? Tally.FOUND : Tally.LOST;
    add(new Tally(Unit.PHOTO, scope, Optional.empty(), "", List.of(found), List.of()), 1);
    Map<Word, Long> alike =
        joints.values().stream().collect(groupingBy(Function.identity(), counting()));
    for (Axis axis : axes) {
      if (axis == Axis.PIN) {
        joints.forEach((pin, word) -> count(photo, scope, axis, pin, word, 1));
      } else {
        alike.forEach((word, n) -> count(photo, scope, axis, 0, word, n));
      }
    }
  }

  private void count(Photo photo, String scope, Axis axis, int pin, Word word, long n) {
    String name = photo.name(axis, pin);
    List<String> verdict = List.of(word.verdict);
    add(new Tally(Unit.JOINT, scope, Optional.of(axis), name, verdict, word.findings), n);
    onBoards
        .computeIfAbsent(new OnBoard(photo.board, scope, axis, name), place -> new TreeSet<>())
        .add(word.verdict);
  }

  private void add(Tally what, long n) {
    counts.merge(what, n, Long::sum);
  }

  /** Of equal photo, board, stage, row and class only the last. */
  private List<Photo> photos() {
    Map<List<Object>, Photo> latest = new HashMap<>();
    handle
        .select(
            "SELECT s.id, s.board_id, s.stage, s.attempt, s.scored_at, s.connector, s.leads,"
                + " s.product_class, s.port, s.person, s.row_reason, p.file_name"
                + " FROM scoring s JOIN photo p ON p.id = s.photo_id"
                + " WHERE s.board_id BETWEEN ? AND ? ORDER BY s.id",
            from,
            to)
        .map((row, context) -> latest.put(sameAs(row), photo(row)))
        .list();
    return List.copyOf(latest.values());
  }

  private static List<Object> sameAs(ResultSet row) throws SQLException {
    return List.of(
        row.getLong("board_id"),
        row.getString("stage"),
        row.getInt("attempt"),
        row.getString("file_name"),
        row.getString("connector"),
        row.getInt("leads"),
        row.getInt("product_class"),
        Optional.ofNullable(row.getString("port")));
  }

  private static Photo photo(ResultSet row) throws SQLException {
    return new Photo(
        row.getLong("id"),
        row.getLong("board_id"),
        Ids.of(Stage.class, Stage::id, row.getString("stage")),
        row.getInt("attempt"),
        row.getString("scored_at").substring(0, "2026-11-28".length()),
        row.getString("connector"),
        row.getString("person"),
        row.getString("row_reason") == null);
  }

  /** The tool's word of each joint, by scoring. */
  private Map<Long, Map<Integer, Word>> words() {
    Map<Long, Set<String>> kinds = new HashMap<>();
    handle
        .select(
            "SELECT x.joint_id, x.kind" + OF_JOINTS.formatted("finding") + " ORDER BY x.id",
            from,
            to)
        .map(
            (row, context) ->
                kinds
                    .computeIfAbsent(row.getLong("joint_id"), joint -> new LinkedHashSet<>())
                    .add(row.getString("kind")))
        .list();
    Map<Long, Map<Integer, Word>> words = new HashMap<>();
    handle
        .select("SELECT j.id, j.scoring_id, j.pin, j.verdict" + JOINTS, from, to)
        .map(
            (row, context) ->
                words
                    .computeIfAbsent(row.getLong("scoring_id"), scoring -> new HashMap<>())
                    .put(
                        row.getInt("pin"),
                        new Word(
                            row.getString("verdict"),
                            List.copyOf(kinds.getOrDefault(row.getLong("id"), Set.of())))))
        .list();
    return words;
  }

  /** Boards of which people or the bench said anything. */
  private Set<Long> said() {
    Set<Long> said = new HashSet<>();
    for (String table : List.of("overrule", "bench_result")) {
      said.addAll(
          handle
              .select("SELECT DISTINCT s.board_id" + OF_JOINTS.formatted(table), from, to)
              .mapTo(Long.class)
              .list());
    }
    return said;
  }

  private Map<Integer, Word> standing(long scoring) {
    return new RowReader(handle, scoring)
        .read().joints().stream().collect(toMap(RecordedJoint::pin, BoardTally::standing));
  }

  private static Word standing(RecordedJoint joint) {
    return new Word(
        joint.verdict().id(),
        joint.standing().joint().findings().stream().map(f -> f.kind().id()).distinct().toList());
  }
}
