package leadlight.app.quality;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.UserError;
import leadlight.quality.LeftOut;
import leadlight.quality.chart.ChartData;
import leadlight.quality.chart.ChartKind;
import leadlight.quality.grades.Reading;
import leadlight.record.JobRecord;
import leadlight.record.Tallies;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.record.scoring.Tally;
import leadlight.record.scoring.Tally.Axis;
import leadlight.record.scoring.Tally.Unit;

/** The joints of the job record, grouped for a chart; what stands counts. */
public final class RecordJoints {

  private RecordJoints() {}

  /**
   * Counts the last scoring of each photo, of each board's last stage, or of the stage named.
   *
   * @param by day (of scoring), connector, operator, pin, stage or finding
   * @param words how verdicts are read; what decides nothing was no opportunity
   */
  public static ChartData read(
      JobRecord record, String by, Optional<Stage> stage, ChartKind kind, Reading words) {
    Axis axis = axis(by);
    String scope = axis == Axis.STAGE ? Tally.ALL : stage.map(Stage::id).orElse(Tally.LAST);
    Tallies tallies = new Tallies(record);
    List<ChartData.Graded> joints = new ArrayList<>();
    int open = 0;
    for (Map.Entry<Tally, Long> counted : tallies.read(Unit.JOINT, scope, axis).entrySet()) {
      Tally what = counted.getKey();
      int n = Math.toIntExact(counted.getValue());
      if (words.open().containsAll(what.verdicts())) {
        open += n;
      } else {
        boolean bad = words.bad().containsAll(what.verdicts());
        joints.add(new ChartData.Graded(group(what), bad, what.findings(), n));
      }
    }
    Map<String, Integer> boards =
        kind == ChartKind.U ? boards(tallies.read(Unit.BOARD, scope, axis), words) : Map.of();
    ChartData data = ChartData.of(joints, boards, by);
    long others = photos(tallies, Tally.ALL) - photos(tallies, scope);
    return new ChartData(data.groups(), data.findings(), List.of(), left(others, open, stage));
  }

  private static Axis axis(String by) {
    return Axis.of(by)
        .orElseThrow(
            () ->
                new UserError(
                    "the record has no "
                        + by
                        + "; day, connector, operator, pin, stage or finding. For a lamp, chart a table with that column"));
  }

  private static String group(Tally what) {
    return what.axis().equals(Optional.of(Axis.STAGE)) ? stageWords(what.name()) : what.name();
  }

  private static String stageWords(String name) {
    String[] parts = name.split(" ");
    Stage stage = Stage.of(parts[0]).orElseThrow();
    return new Subject("any", "any", stage, Integer.parseInt(parts[1])).stageWords();
  }

  /** Boards with a joint that decides anything, by group. */
  private static Map<String, Integer> boards(Map<Tally, Long> counted, Reading words) {
    Map<String, Integer> boards = new HashMap<>();
    counted.forEach(
        (what, n) -> {
          if (!words.open().containsAll(what.verdicts())) {
            boards.merge(group(what), Math.toIntExact(n), Integer::sum);
          }
        });
    return boards;
  }

  private static long photos(Tallies tallies, String scope) {
    return tallies.photos(scope).values().stream().mapToLong(n -> n).sum();
  }

  private static List<String> left(long photos, int open, Optional<Stage> stage) {
    List<String> left = new ArrayList<>();
    if (photos > 0) {
      left.add(
          LeftOut.ofStages(
              Math.toIntExact(photos),
              "photo",
              "other",
              stage.map(s -> "only " + s.words() + " counts").orElse(LeftOut.LAST_STAGE)));
    }
    if (open > 0) {
      left.add(LeftOut.undecided(open));
    }
    return left;
  }

  /** Photos of the record whose row was not found, so that none of their joints is counted. */
  public static long withoutRow(JobRecord record) {
    return new Tallies(record)
        .photos(Tally.ALL).entrySet().stream()
            .filter(photos -> photos.getKey().verdicts().contains(Tally.LOST))
            .mapToLong(Map.Entry::getValue)
            .sum();
  }
}
