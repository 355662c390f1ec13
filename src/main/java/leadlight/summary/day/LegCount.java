package leadlight.summary.day;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.summary.board.LegsStanding;

/**
 * The anchor legs of a board as opportunities for defects: those that a photo of the solder side
 * judged; where none shows that side, those that were called from the component side.
 *
 * @param defects legs that are a defect
 * @param judged legs that are judged
 */
record LegCount(int defects, int judged) {

  /**
   * Counts.
   *
   * @param events the board's life
   * @param stage what was noted of this stage alone; empty: all, as it stands last
   */
  static LegCount of(List<LifeEvent> events, Optional<String> stage) {
    List<LifeEvent> legs =
        events.stream()
            .filter(event -> event.kind() == LifeEvent.Kind.LEGS)
            .filter(
                event ->
                    stage.isEmpty()
                        || LegsSeen.of(event).work().map(LegsSeen.Work::stage).equals(stage))
            .toList();
    Map<String, List<LegsSeen>> byPort =
        LegsStanding.of(legs).stream()
            .collect(Collectors.groupingBy(seen -> seen.port().orElse("")));
    LegCount sum = new LegCount(0, 0);
    for (List<LegsSeen> sides : byPort.values()) {
      sum = sum.and(ofPort(sides));
    }
    return sum;
  }

  private static LegCount ofPort(List<LegsSeen> sides) {
    LegsSeen seen =
        sides.stream()
            .filter(it -> it.side().equals(BoardSide.SOLDER.id()))
            .findFirst()
            .orElse(sides.get(0));
    int defects = seen.numbers(Verdict.DEFECT).size();
    int open = seen.numbers(Verdict.UNJUDGED).size();
    return new LegCount(defects, seen.legs().size() - open);
  }

  private LegCount and(LegCount other) {
    return new LegCount(defects + other.defects, judged + other.judged);
  }
}
