package leadlight.cli;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;
import leadlight.quality.ChartData;
import leadlight.quality.Reading;
import leadlight.record.JobRecord;
import leadlight.record.RecordedJoint;
import leadlight.record.Scoring;
import leadlight.record.Search;

/** The joints of the job record, grouped for a chart; what stands counts. */
final class RecordJoints {

  private RecordJoints() {}

  /**
   * Reads the last scoring of each photo.
   *
   * @param by day (of scoring), connector, operator or pin
   * @param words how verdicts are read; what decides nothing was no opportunity
   */
  static List<ChartData.Graded> read(JobRecord record, String by, Reading words) {
    List<ChartData.Graded> joints = new ArrayList<>();
    for (Scoring scoring : record.scorings(Search.all().latestOnly())) {
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

  /** Photos of the record whose row was not found, so that none of their joints is counted. */
  static long withoutRow(JobRecord record) {
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
      default ->
          throw new UserError("the record has no " + by + "; day, connector, operator or pin");
    };
  }
}
