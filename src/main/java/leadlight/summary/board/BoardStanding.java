package leadlight.summary.board;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Subject;

/**
 * How a board stands: its photos and its life, what of it is still open, and whether a recorded
 * opinion forbids to hand it back.
 *
 * @param job the job's name
 * @param board the board's name
 * @param shots its photos, oldest first, the last scoring of each
 * @param events its life beside the photos, oldest first
 * @param heats how often each pin was heated, counted from the events
 * @param open what is open, what forbids a hand-back first
 */
public record BoardStanding(
    String job,
    String board,
    List<Shot> shots,
    List<LifeEvent> events,
    Map<Integer, Integer> heats,
    List<Point> open) {

  /**
   * A photo.
   *
   * @param scoring its scoring
   * @param row its row as recorded
   */
  public record Shot(Scoring scoring, RecordedRow row) {

    /** The verdict that counts. */
    public Verdict verdict() {
      return row.verdict();
    }

    /** Whether another photo shows the same row of the board. */
    public boolean isOfSameRow(Shot other) {
      return BoardStanding.row(this).equals(BoardStanding.row(other));
    }
  }

  /** What can be open; those that forbid a hand-back come first. */
  public enum Code {
    NO_PHOTO("no-photo"),
    NO_ROW("no-row"),
    DEFECT("defect"),
    LEG_DEFECT("leg-defect"),
    BENCH_FAULT("bench-fault"),
    TEST_FAILED("test-failed"),
    HEATED_SINCE("heated-since"),
    UNJUDGED("unjudged"),
    LEGS_UNJUDGED("legs-unjudged"),
    TOO_HOT("too-hot"),
    NO_TEST("no-test"),
    NOT_HANDED_BACK("not-handed-back"),
    NO_DECISION("no-decision");

    private final String id;

    Code(String id) {
      this.id = id;
    }

    /** The name in word lists. */
    public String id() {
      return id;
    }

    /** Whether it contradicts that the board is fit to be handed back. */
    public boolean forbids() {
      return compareTo(HEATED_SINCE) <= 0;
    }
  }

  /**
   * Something open.
   *
   * @param code what
   * @param pins which pins; empty if it is not of pins
   * @param words a person's words on it, or which row its pins are of; may be empty
   */
  public record Point(Code code, List<Integer> pins, String words) {}

  /** Copies the lists. */
  public BoardStanding {
    shots = List.copyOf(shots);
    events = List.copyOf(events);
    open = List.copyOf(open);
  }

  /**
   * How a board stands now.
   *
   * @param mostHeats how often a joint may be heated
   */
  public static BoardStanding of(JobRecord record, String job, String board, int mostHeats) {
    List<Shot> shots = shots(record, job, board);
    List<LifeEvent> events = record.life(job, board);
    Map<Integer, Integer> heats = heats(events);
    List<Point> open = new OpenList(shots, events).of(heats, mostHeats);
    return new BoardStanding(job, board, shots, events, heats, open);
  }

  private static List<Shot> shots(JobRecord record, String job, String board) {
    Search search =
        new Search(
            Optional.of(job),
            Optional.of(board),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            true);
    return record.scorings(search).stream()
        .map(scoring -> new Shot(scoring, record.row(scoring.id())))
        .toList();
  }

  private static Map<Integer, Integer> heats(List<LifeEvent> events) {
    Map<Integer, Integer> heats = new TreeMap<>();
    events.forEach(event -> event.pins().forEach(pin -> heats.merge(pin, 1, Integer::sum)));
    return heats;
  }

  /**
   * How the board stands by photo: of each row the photo of its last stage, and one of an earlier
   * stage that was taken down later, since one of the two is not what its stage says.
   */
  public List<Shot> last() {
    return last(shots);
  }

  static List<Shot> last(List<Shot> shots) {
    Comparator<Subject> way = Comparator.comparing(Subject::stage).thenComparing(Subject::attempt);
    Map<String, Set<Shot>> rows = new LinkedHashMap<>();
    for (Map.Entry<String, List<Shot>> row : byRow(shots).entrySet()) {
      Subject stage =
          row.getValue().stream().map(shot -> shot.scoring.subject()).max(way).orElseThrow();
      List<Shot> there =
          row.getValue().stream().filter(s -> s.scoring.subject().equals(stage)).toList();
      Set<Shot> count = rows.computeIfAbsent(row.getKey(), key -> new LinkedHashSet<>());
      count.add(there.get(there.size() - 1));
      count.add(row.getValue().get(row.getValue().size() - 1));
    }
    return rows.values().stream().flatMap(Set::stream).toList();
  }

  /** Photos by the row that they show, in the order in which the rows came. */
  static Map<String, List<Shot>> byRow(List<Shot> shots) {
    return shots.stream()
        .collect(
            Collectors.groupingBy(BoardStanding::row, LinkedHashMap::new, Collectors.toList()));
  }

  private static String row(Shot shot) {
    return shot.scoring.method().settings().row().connectorId()
        + " "
        + shot.scoring.method().settings().row().leads()
        + shot.scoring.subject().port().map(port -> " " + port).orElse("");
  }

  /** Rows of which there are photos. */
  public int rows() {
    return byRow(shots).size();
  }

  /** The worst of {@link #last} and of the legs; unjudged where there is no photo of a row. */
  public Verdict verdict() {
    Verdict rows =
        last().stream().map(Shot::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED);
    return open.stream()
        .map(Point::code)
        .filter(code -> code == Code.LEG_DEFECT || code == Code.LEGS_UNJUDGED)
        .map(code -> code == Code.LEG_DEFECT ? Verdict.DEFECT : Verdict.UNJUDGED)
        .reduce(rows, Verdict::worse);
  }

  /** Whether nothing that is recorded forbids to hand the board back. */
  public boolean mayBeHandedBack() {
    return open.stream().noneMatch(point -> point.code.forbids());
  }

  /** Legs as they stand, by connector and side. */
  public List<LegsSeen> legs() {
    return LegsStanding.of(events);
  }

  static Instant when(Shot shot) {
    return shot.scoring.scoredAt().toInstant();
  }

  /**
   * The decision to hand it back or not, if nothing was photographed, looked at or heated since.
   */
  public Optional<LifeEvent> decision() {
    return current(shots, events, LifeEvent.Kind.HAND_BACK);
  }

  /** The last event of a kind, unless the board was photographed or heated after it. */
  static Optional<LifeEvent> current(
      List<Shot> shots, List<LifeEvent> events, LifeEvent.Kind kind) {
    Optional<Instant> changed =
        Stream.concat(
                shots.stream().map(BoardStanding::when),
                events.stream().filter(BoardStanding::isNews).map(event -> event.at().toInstant()))
            .max(Instant::compareTo);
    return lastOf(events, kind)
        .filter(event -> changed.isEmpty() || !event.at().toInstant().isBefore(changed.get()));
  }

  /** A heat, or legs that were seen. */
  private static boolean isNews(LifeEvent event) {
    return !event.pins().isEmpty() || event.kind() == LifeEvent.Kind.LEGS;
  }

  /** The last event of a kind. */
  public Optional<LifeEvent> lastOf(LifeEvent.Kind kind) {
    return lastOf(events, kind);
  }

  private static Optional<LifeEvent> lastOf(List<LifeEvent> events, LifeEvent.Kind kind) {
    return IntStream.iterate(events.size() - 1, i -> i >= 0, i -> i - 1)
        .mapToObj(events::get)
        .filter(event -> event.kind() == kind)
        .findFirst();
  }
}
