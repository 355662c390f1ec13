package leadlight.app.quality;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.quality.chart.RareEvents;
import leadlight.quality.grades.Reading;
import leadlight.record.JobRecord;
import leadlight.record.Tallies;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;

/**
 * The judged joints of the job record one after the other, for charts of rare events. Only days
 * with a defect are read joint by joint: those without are counted.
 */
public final class RecordDays {

  private final JobRecord record;
  private final Optional<Stage> stage;
  private final Reading words;
  private final Map<List<String>, Integer> lastStages = new HashMap<>();

  /**
   * Takes the last scoring of each photo, of each board's last stage, or of the stage named.
   *
   * @param words how verdicts are read; what decides nothing was no opportunity
   */
  public RecordDays(JobRecord record, Optional<Stage> stage, Reading words) {
    this.record = record;
    this.stage = stage;
    this.words = words;
  }

  /** Joints of a day: sound ones, and whether there are others. */
  private record Day(int sound, boolean anyBad) {
    Day and(Day other) {
      return new Day(sound + other.sound, anyBad || other.anyBad);
    }
  }

  /** All judged joints, by day and in the order they were scored. */
  public List<RareEvents.Looked> looked() {
    Map<String, Day> days = new TreeMap<>();
    new Tallies(record)
        .read(Unit.JOINT, stage.map(Stage::id).orElse(Tally.LAST), Axis.DAY)
        .forEach(
            (what, n) -> {
              if (!words.open().containsAll(what.verdicts())) {
                boolean bad = words.bad().containsAll(what.verdicts());
                Day day = new Day(bad ? 0 : Math.toIntExact(n), bad);
                days.merge(what.name(), day, Day::and);
              }
            });
    List<RareEvents.Looked> looked = new ArrayList<>();
    days.forEach(
        (name, day) -> {
          if (day.anyBad) {
            read(name, looked);
          } else {
            looked.addAll(Collections.nCopies(day.sound, new RareEvents.Looked(name, false)));
          }
        });
    return looked;
  }

  private void read(String day, List<RareEvents.Looked> looked) {
    for (Scoring scoring : record.scorings(Search.ofDay(LocalDate.parse(day)))) {
      if (counts(scoring)) {
        for (RecordedJoint joint : record.row(scoring.id()).joints()) {
          String verdict = joint.verdict().id();
          if (!words.open().contains(verdict)) {
            looked.add(new RareEvents.Looked(day, words.bad().contains(verdict)));
          }
        }
      }
    }
  }

  private boolean counts(Scoring scoring) {
    return stage
        .map(only -> scoring.subject().stage() == only)
        .orElseGet(
            () ->
                when(scoring)
                    == lastStages.computeIfAbsent(
                        List.of(scoring.subject().job(), scoring.subject().board()),
                        this::lastStage));
  }

  private int lastStage(List<String> board) {
    return record.scorings(Search.ofBoard(board.get(0), board.get(1))).stream()
        .mapToInt(RecordDays::when)
        .max()
        .orElseThrow();
  }

  private static int when(Scoring scoring) {
    return 1000 * scoring.subject().stage().ordinal() + scoring.subject().attempt();
  }
}
