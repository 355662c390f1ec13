package leadlight.summary.day;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.BoardSide;
import leadlight.model.Verdict;
import leadlight.record.JobRecord;
import leadlight.record.said.LegsSeen;
import leadlight.record.said.LifeEvent;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.statistics.ClusterRate;
import leadlight.summary.board.LegsStanding;

/**
 * Defects in a million opportunities, stage by stage and as each board was seen last: joints of the
 * photos that are meant, and legs that were noted on the days that are meant.
 */
record DayRates(JobRecord record, Search search) {

  List<Dpmo> of(List<PhotoLine> photos) {
    List<Dpmo> all = new ArrayList<>();
    for (Stage stage : Stage.values()) {
      List<PhotoLine> lines =
          photos.stream().filter(line -> line.subject().stage() == stage).toList();
      if (!lines.isEmpty()) {
        all.add(dpmo(Optional.of(stage), lines));
      }
    }
    all.add(dpmo(Optional.empty(), lastStages(photos)));
    return all;
  }

  private Dpmo dpmo(Optional<Stage> stage, List<PhotoLine> lines) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    lines.forEach(
        line -> rate.add(board(line), line.tally().count(Verdict.DEFECT), line.tally().judged()));
    int legs = 0;
    for (List<String> board : lines.stream().map(DayRates::board).distinct().toList()) {
      LegCount count = LegCount.of(lifeOf(board), stage.map(Stage::id));
      rate.add(board, count.defects(), count.judged());
      legs += count.judged();
    }
    return new Dpmo(stage, rate.rate(), legs);
  }

  /** What was noted on the days that are meant: what is of another day is counted there. */
  private List<LifeEvent> lifeOf(List<String> board) {
    return record.life(board.get(0), board.get(1)).stream()
        .filter(event -> search.isOn(event.at().toLocalDate()))
        .toList();
  }

  /** The photos of the last stage that each board was photographed at. */
  static List<PhotoLine> lastStages(List<PhotoLine> lines) {
    Map<List<String>, PhotoLine> last = new HashMap<>();
    lines.forEach(line -> last.put(board(line), line));
    return lines.stream()
        .filter(
            line -> {
              PhotoLine end = last.get(board(line));
              return line.subject().stage() == end.subject().stage()
                  && line.subject().attempt() == end.subject().attempt();
            })
        .toList();
  }

  private static List<String> board(PhotoLine line) {
    return List.of(line.subject().job(), line.subject().board());
  }

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
}
