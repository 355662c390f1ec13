package leadlight.summary;

import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import leadlight.model.Verdict;
import leadlight.record.BenchResult;
import leadlight.record.JobRecord;
import leadlight.record.LifeEvent;
import leadlight.record.RecordedJoint;
import leadlight.record.RecordedRow;
import leadlight.record.Scoring;
import leadlight.record.Search;
import leadlight.record.Standing;
import leadlight.record.Subject;

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
  }

  /** What can be open; those that forbid a hand-back come first. */
  public enum Code {
    NO_PHOTO("no-photo"),
    NO_ROW("no-row"),
    DEFECT("defect"),
    BENCH_FAULT("bench-fault"),
    TEST_FAILED("test-failed"),
    UNJUDGED("unjudged"),
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
      return compareTo(TEST_FAILED) <= 0;
    }
  }

  /**
   * Something open.
   *
   * @param code what
   * @param pins which pins; empty if it is not of pins
   * @param words a person's words on it; may be empty
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
    List<Point> open = new ArrayList<>();
    ofPhotos(shots, events, open);
    ofEvents(events, heats, mostHeats, open);
    open.sort(Comparator.comparing(Point::code));
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

  /** The last photo of each row at the last stage: how the board stands by photo. */
  public List<Shot> last() {
    return last(shots);
  }

  private static List<Shot> last(List<Shot> shots) {
    Comparator<Subject> way = Comparator.comparing(Subject::stage).thenComparing(Subject::attempt);
    Optional<Subject> stage = shots.stream().map(shot -> shot.scoring.subject()).max(way);
    Map<String, Shot> rows = new LinkedHashMap<>();
    shots.stream()
        .filter(shot -> stage.isPresent() && shot.scoring.subject().equals(stage.get()))
        .forEach(shot -> rows.put(row(shot), shot));
    return List.copyOf(rows.values());
  }

  private static String row(Shot shot) {
    return shot.scoring.method().settings().row().connectorId()
        + " "
        + shot.scoring.method().settings().row().leads();
  }

  /** The worst of the last stage; unjudged where there is no photo. */
  public Verdict verdict() {
    return last().stream().map(Shot::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED);
  }

  /** Whether nothing that is recorded forbids to hand the board back. */
  public boolean mayBeHandedBack() {
    return open.stream().noneMatch(point -> point.code.forbids());
  }

  private static void ofPhotos(List<Shot> shots, List<LifeEvent> events, List<Point> open) {
    List<Shot> last = last(shots);
    if (last.isEmpty()) {
      open.add(new Point(Code.NO_PHOTO, List.of(), ""));
    }
    for (Shot shot : last) {
      if (shot.row.joints().isEmpty()) {
        open.add(new Point(Code.NO_ROW, List.of(), shot.scoring.photo().file()));
      }
      add(open, Code.DEFECT, pins(shot, Verdict.DEFECT));
      add(open, Code.UNJUDGED, pins(shot, Verdict.UNJUDGED));
      List<Integer> left =
          shots.stream()
              .filter(earlier -> row(earlier).equals(row(shot)) && earlier != shot)
              .flatMap(earlier -> benchFaults(earlier).stream())
              .distinct()
              .sorted()
              .filter(pin -> !settledSince(pin, shot, shots, events))
              .toList();
      add(open, Code.BENCH_FAULT, left);
    }
  }

  private static void add(List<Point> open, Code code, List<Integer> pins) {
    if (!pins.isEmpty()) {
      open.add(new Point(code, pins, ""));
    }
  }

  private static List<Integer> pins(Shot shot, Verdict verdict) {
    return shot.row.joints().stream()
        .filter(joint -> joint.verdict() == verdict)
        .map(RecordedJoint::pin)
        .toList();
  }

  private static List<Integer> benchFaults(Shot shot) {
    return shot.row.joints().stream()
        .filter(joint -> joint.standing().source() == Standing.Source.BENCH)
        .filter(joint -> joint.verdict() == Verdict.DEFECT)
        .map(RecordedJoint::pin)
        .toList();
  }

  /**
   * Heated after the fault was found, or tried again, or looked at by a person, at the last stage.
   */
  private static boolean settledSince(
      int pin, Shot last, List<Shot> shots, List<LifeEvent> events) {
    Optional<ZonedDateTime> found =
        shots.stream()
            .filter(shot -> shot != last && row(shot).equals(row(last)))
            .filter(shot -> pin <= shot.row.joints().size())
            .flatMap(shot -> shot.row.joints().get(pin - 1).bench().stream())
            .map(BenchResult::at)
            .max(Comparator.comparing(ZonedDateTime::toInstant));
    boolean heated =
        events.stream()
            .filter(event -> event.pins().contains(pin))
            .anyMatch(event -> found.isEmpty() || !event.at().isBefore(found.get()));
    boolean said =
        pin <= last.row.joints().size()
            && (!last.row.joints().get(pin - 1).bench().isEmpty()
                || !last.row.joints().get(pin - 1).overrules().isEmpty());
    return heated || said;
  }

  private static void ofEvents(
      List<LifeEvent> events, Map<Integer, Integer> heats, int mostHeats, List<Point> open) {
    add(
        open,
        Code.TOO_HOT,
        heats.entrySet().stream()
            .filter(entry -> entry.getValue() > mostHeats)
            .map(Map.Entry::getKey)
            .toList());
    Optional<LifeEvent> test = lastOf(events, LifeEvent.Kind.FUNCTION_TEST);
    if (test.isEmpty()) {
      open.add(new Point(Code.NO_TEST, List.of(), ""));
    } else if (!test.get().good().orElseThrow()) {
      open.add(new Point(Code.TEST_FAILED, List.of(), test.get().words()));
    }
    Optional<LifeEvent> decision = lastOf(events, LifeEvent.Kind.HAND_BACK);
    if (decision.isEmpty()) {
      open.add(new Point(Code.NO_DECISION, List.of(), ""));
    } else if (!decision.get().good().orElseThrow()) {
      open.add(new Point(Code.NOT_HANDED_BACK, List.of(), decision.get().words()));
    }
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
