package leadlight.summary.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.RecordedJoint;
import leadlight.summary.board.BoardStanding.Code;
import leadlight.summary.board.BoardStanding.Point;
import leadlight.summary.board.BoardStanding.Shot;

/** Gathers what of a board is open. */
final class OpenList {

  private final List<Shot> shots;
  private final List<LifeEvent> events;
  private final List<Point> open = new ArrayList<>();

  OpenList(List<Shot> shots, List<LifeEvent> events) {
    this.shots = shots;
    this.events = events;
  }

  /** What is open, what forbids a hand-back first. */
  List<Point> of(Map<Integer, Integer> heats, int mostHeats) {
    ofPhotos();
    ofLegs();
    ofEvents(heats, mostHeats);
    open.sort(Comparator.comparing(Point::code));
    return open;
  }

  private void ofPhotos() {
    List<Shot> last = BoardStanding.last(shots);
    if (last.isEmpty()) {
      open.add(new Point(Code.NO_PHOTO, List.of(), ""));
    }
    for (Shot shot : last) {
      if (shot.row().joints().isEmpty()) {
        open.add(new Point(Code.NO_ROW, List.of(), shot.scoring().photo().file()));
      }
      add(Code.DEFECT, pins(shot, Verdict.DEFECT), name(shot));
      add(Code.UNJUDGED, pins(shot, Verdict.UNJUDGED), name(shot));
    }
    Map<String, List<Shot>> rows = BoardStanding.byRow(shots);
    // A heat names pins and no row: of several rows it settles none.
    List<LifeEvent> heats = rows.size() == 1 ? events : List.of();
    rows.values()
        .forEach(row -> add(Code.BENCH_FAULT, earlierFaults(row, last, heats), name(row.get(0))));
    add(Code.HEATED_SINCE, heatedSince(), "");
  }

  /** Faults of the bench that the last photo's own verdicts do not say already. */
  private static List<Integer> earlierFaults(
      List<Shot> row, List<Shot> last, List<LifeEvent> heats) {
    List<Integer> pins = new ArrayList<>(BenchFaults.unsettled(row, last, heats));
    row.stream().filter(last::contains).forEach(s -> pins.removeAll(pins(s, Verdict.DEFECT)));
    return pins;
  }

  /** What tells a row from the others of its board; empty if it has no other. */
  private String name(Shot shot) {
    return BoardStanding.byRow(shots).size() == 1
        ? ""
        : shot.scoring()
            .subject()
            .port()
            .orElse(shot.scoring().method().settings().row().connectorId());
  }

  private void ofLegs() {
    for (LegsSeen seen : LegsStanding.of(events)) {
      addLegs(Code.LEG_DEFECT, seen.numbers(Verdict.DEFECT));
      addLegs(
          Code.LEGS_UNJUDGED,
          seen.legs().isEmpty() ? List.of("-") : seen.numbers(Verdict.UNJUDGED));
    }
  }

  private void addLegs(Code code, List<String> legs) {
    if (!legs.isEmpty()) {
      open.add(new Point(code, List.of(), String.join(", ", legs)));
    }
  }

  /**
   * Pins that were heated after the last photo: it shows them as they were before. A heat names no
   * row, so of several rows the one counts whose last photo is the oldest.
   */
  private List<Integer> heatedSince() {
    Optional<Instant> photo =
        BoardStanding.byRow(shots).values().stream()
            .map(row -> row.stream().map(BoardStanding::when).max(Instant::compareTo).orElseThrow())
            .min(Instant::compareTo);
    return events.stream()
        .filter(event -> photo.isPresent() && event.at().toInstant().isAfter(photo.get()))
        .flatMap(event -> event.pins().stream())
        .distinct()
        .sorted()
        .toList();
  }

  private void add(Code code, List<Integer> pins, String row) {
    if (!pins.isEmpty()) {
      open.add(new Point(code, pins, row));
    }
  }

  private static List<Integer> pins(Shot shot, Verdict verdict) {
    return shot.row().joints().stream()
        .filter(joint -> joint.verdict() == verdict)
        .map(RecordedJoint::pin)
        .toList();
  }

  private void ofEvents(Map<Integer, Integer> heats, int mostHeats) {
    add(
        Code.TOO_HOT,
        heats.entrySet().stream()
            .filter(entry -> entry.getValue() > mostHeats)
            .map(Map.Entry::getKey)
            .toList(),
        "");
    Optional<LifeEvent> test = BoardStanding.current(shots, events, LifeEvent.Kind.FUNCTION_TEST);
    if (test.isEmpty()) {
      open.add(new Point(Code.NO_TEST, List.of(), ""));
    } else if (!test.get().good().orElseThrow()) {
      open.add(new Point(Code.TEST_FAILED, List.of(), test.get().words()));
    }
    Optional<LifeEvent> decision = BoardStanding.current(shots, events, LifeEvent.Kind.HAND_BACK);
    if (decision.isEmpty()) {
      open.add(new Point(Code.NO_DECISION, List.of(), ""));
    } else if (!decision.get().good().orElseThrow()) {
      open.add(new Point(Code.NOT_HANDED_BACK, List.of(), decision.get().words()));
    }
  }
}
