package leadlight.cli;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import leadlight.model.UserError;
import leadlight.quality.ChartData;
import leadlight.quality.Reading;
import leadlight.record.JobRecord;
import leadlight.record.RecordedJoint;
import leadlight.record.Scoring;
import leadlight.record.Search;
import leadlight.record.Stage;
import leadlight.record.Subject;

/** The joints of the job record, grouped for a chart; what stands counts. */
final class RecordJoints {

  private RecordJoints() {}

  /**
   * Reads the last scoring of each photo.
   *
   * @param by day (of scoring), connector, operator or pin
   * @param stage a stage, "all", or "last": of each board the last that it reached
   * @param words how verdicts are read; what decides nothing was no opportunity
   */
  static List<ChartData.Graded> read(JobRecord record, String by, String stage, Reading words) {
    List<ChartData.Graded> joints = new ArrayList<>();
    for (Scoring scoring : ofStage(record, stage)) {
      for (RecordedJoint joint : record.row(scoring.id()).joints()) {
        if (words.open().contains(joint.verdict().id())) {
          continue;
        }
        List<String> findings =
            joint.standing().joint().findings().stream()
                .map(f -> f.kind().id())
                .distinct()
                .toList();
        joints.add(
            new ChartData.Graded(
                group(scoring, joint, by),
                scoring.subject().job() + " " + scoring.subject().board(),
                words.bad().contains(joint.verdict().id()),
                findings));
      }
    }
    return joints;
  }

  /** A board is counted once: at the stage asked for, or at the last that it reached. */
  private static List<Scoring> ofStage(JobRecord record, String stage) {
    List<Scoring> all = record.scorings(Search.all().latestOnly());
    if (stage.equals("all")) {
      return all;
    }
    if (stage.equals("last")) {
      Map<String, Subject> last = new HashMap<>();
      all.forEach(s -> last.merge(board(s.subject()), s.subject(), RecordJoints::later));
      return all.stream().filter(s -> s.subject().equals(last.get(board(s.subject())))).toList();
    }
    Stage only =
        Stage.of(stage)
            .orElseThrow(
                () ->
                    new UserError(
                        "--stage must be last, all, as-received, after-rework or final, is "
                            + stage));
    return all.stream().filter(s -> s.subject().stage() == only).toList();
  }

  private static String board(Subject subject) {
    return subject.job() + "\n" + subject.board();
  }

  private static Subject later(Subject one, Subject other) {
    Comparator<Subject> way = Comparator.comparing(Subject::stage).thenComparing(Subject::attempt);
    return way.compare(one, other) >= 0 ? one : other;
  }

  /** Photos of the record whose row was not found, so that none of their joints is counted. */
  static long withoutRow(JobRecord record, String stage) {
    return ofStage(record, stage).stream().filter(s -> s.rowReason().isPresent()).count();
  }

  private static String group(Scoring scoring, RecordedJoint joint, String by) {
    return switch (by) {
      case "day" -> scoring.scoredAt().toLocalDate().toString();
      case "connector" -> scoring.method().settings().row().connectorId();
      case "operator" -> scoring.person();
      case "pin" -> Integer.toString(joint.pin());
      default ->
          throw new UserError("the record has no " + by + "; day, connector, operator or pin");
    };
  }
}
