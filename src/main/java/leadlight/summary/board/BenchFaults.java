package leadlight.summary.board;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import leadlight.record.said.BenchResult;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.RecordedJoint;
import leadlight.summary.board.BoardStanding.Shot;

/**
 * Faults that the bench found at earlier photos of a row and that nothing has settled since: the
 * same question answered well, a heat of the pin, or a person's opinion at the photo that counts
 * now.
 */
final class BenchFaults {

  /** What bench results call faulty; each is an answer to one question. */
  private static final List<String> FAULTY = List.of("moves", "open", "short");

  private BenchFaults() {}

  /**
   * The pins, in order.
   *
   * @param row all photos of one row, oldest first
   * @param counts the photos that count now, of all rows
   */
  static List<Integer> unsettled(List<Shot> row, List<Shot> counts, List<LifeEvent> events) {
    Map<Integer, List<BenchResult>> results = new TreeMap<>();
    for (Shot shot : row) {
      for (RecordedJoint joint : shot.row().joints()) {
        results.computeIfAbsent(joint.pin(), pin -> new ArrayList<>()).addAll(joint.bench());
      }
    }
    return results.entrySet().stream()
        .filter(
            pin ->
                faults(pin.getValue()).stream()
                    .anyMatch(at -> !settled(pin.getKey(), at, row, counts, events)))
        .map(Map.Entry::getKey)
        .toList();
  }

  /** When each question whose last answer is a fault got it: is it joined, is it short to a pin. */
  private static List<Instant> faults(List<BenchResult> results) {
    Map<OptionalInt, BenchResult> last = new HashMap<>();
    results.stream()
        .sorted(Comparator.comparing(result -> result.at().toInstant()))
        .forEach(result -> last.put(result.otherPin(), result));
    return last.values().stream()
        .filter(result -> FAULTY.contains(result.result()))
        .map(result -> result.at().toInstant())
        .toList();
  }

  private static boolean settled(
      int pin, Instant found, List<Shot> row, List<Shot> counts, List<LifeEvent> events) {
    boolean heated =
        events.stream()
            .anyMatch(e -> e.pins().contains(pin) && !e.at().toInstant().isBefore(found));
    boolean said =
        row.stream()
            .filter(counts::contains)
            .flatMap(shot -> shot.row().joints().stream())
            .filter(joint -> joint.pin() == pin)
            .flatMap(joint -> joint.overrules().stream())
            .anyMatch(opinion -> !opinion.at().toInstant().isBefore(found));
    return heated || said;
  }
}
