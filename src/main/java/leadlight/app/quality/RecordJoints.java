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
import leadlight.quality.chart.RareEvents;
import leadlight.quality.grades.Reading;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;
import leadlight.record.scoring.Stage;

/** The joints of the job record, grouped for a chart; what stands counts. */
public final class RecordJoints {

  private RecordJoints() {}

  /**
   * Reads the last scoring of each photo, of each board's last stage, or of the stage named.
   *
   * @param by day (of scoring), connector, operator, pin, stage or finding
   * @param words how verdicts are read; what decides nothing was no opportunity
   */
  public static ChartData read(
      JobRecord record, String by, Optional<Stage> stage, ChartKind kind, Reading words) {
    List<ChartData.Graded> joints = new ArrayList<>();
    List<RareEvents.Looked> looked = new ArrayList<>();
    List<Scoring> all = record.scorings(Search.all().latestOnly());
    List<Scoring> taken = by.equals("stage") ? all : ofStage(all, stage);
    int open = 0;
    for (Scoring scoring : taken) {
      for (RecordedJoint joint : record.row(scoring.id()).joints()) {
        if (words.open().contains(joint.verdict().id())) {
          open++;
          continue;
        }
        boolean bad = words.bad().contains(joint.verdict().id());
        List<String> findings =
            joint.standing().joint().findings().stream()
                .map(f -> f.kind().id())
                .distinct()
                .toList();
        String board = scoring.subject().job() + " " + scoring.subject().board();
        joints.add(new ChartData.Graded(group(scoring, joint, by), board, bad, findings));
        looked.add(new RareEvents.Looked(scoring.scoredAt().toLocalDate().toString(), bad));
      }
    }
    return ChartData.of(joints, looked, left(all.size() - taken.size(), open, stage), kind, by);
  }

  private static List<String> left(int photos, int open, Optional<Stage> stage) {
    List<String> left = new ArrayList<>();
    if (photos > 0) {
      left.add(
          LeftOut.ofStages(
              photos,
              "photo",
              "other",
              stage.map(s -> "only " + s.words() + " counts").orElse(LeftOut.LAST_STAGE)));
    }
    if (open > 0) {
      left.add(LeftOut.undecided(open));
    }
    return left;
  }

  private static List<Scoring> ofStage(List<Scoring> all, Optional<Stage> stage) {
    if (stage.isPresent()) {
      return all.stream().filter(s -> s.subject().stage() == stage.get()).toList();
    }
    Map<List<String>, Integer> last = new HashMap<>();
    all.forEach(s -> last.merge(board(s), when(s), Math::max));
    return all.stream().filter(s -> when(s) == last.get(board(s))).toList();
  }

  private static List<String> board(Scoring scoring) {
    return List.of(scoring.subject().job(), scoring.subject().board());
  }

  private static int when(Scoring scoring) {
    return 1000 * scoring.subject().stage().ordinal() + scoring.subject().attempt();
  }

  /** Photos of the record whose row was not found, so that none of their joints is counted. */
  public static long withoutRow(JobRecord record) {
    return record.scorings(Search.all().latestOnly()).stream()
        .filter(s -> s.rowReason().isPresent())
        .count();
  }

  private static String group(Scoring scoring, RecordedJoint joint, String by) {
    return switch (by) {
      case "day" -> scoring.scoredAt().toLocalDate().toString();
      case "connector" -> scoring.method().settings().row().connectorId();
      case "operator" -> scoring.person();
      case "pin" -> Integer.toString(joint.pin());
      case "stage" -> scoring.subject().stageWords();
      case "finding" -> "";
      default ->
          throw new UserError(
              "the record has no "
                  + by
                  + "; day, connector, operator, pin, stage or finding. For a lamp, chart a table with that column");
    };
  }
}
