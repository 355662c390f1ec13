package leadlight.app.trial;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.quality.bench.Settled;
import leadlight.quality.bench.Settled.Bench;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.RecordedJoint;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Search;

/** The record's joints with what the bench and people said of them. */
public final class RecordBench {

  private RecordBench() {}

  /** The last scoring of each photo; a joint that was scored again keeps what was said of it. */
  public static List<Settled> read(JobRecord record) {
    List<Settled> joints = new ArrayList<>();
    for (Scoring scoring : record.scorings(Search.all().latestOnly())) {
      for (RecordedJoint joint : record.row(scoring.id()).joints()) {
        joints.add(settled(scoring, joint));
      }
    }
    return joints;
  }

  private static Settled settled(Scoring scoring, RecordedJoint joint) {
    return new Settled(
        scoring.subject().job() + " " + scoring.subject().board(),
        YearMonth.from(scoring.scoredAt()),
        joint.tool().verdict(),
        joint.tool().findings().stream()
            .filter(finding -> finding.verdict() == Verdict.DEFECT)
            .map(Finding::kind)
            .distinct()
            .toList(),
        last(joint.bench()).map(RecordBench::bench),
        last(joint.overrules()).map(overrule -> overrule.verdict()));
  }

  private static <T> Optional<T> last(List<T> said) {
    return said.isEmpty() ? Optional.empty() : Optional.of(said.get(said.size() - 1));
  }

  private static Bench bench(BenchResult result) {
    return switch (result.result()) {
      case "moves", "open" -> Bench.OPEN;
      case "short" -> Bench.SHORT;
      case "firm" -> Bench.FIRM;
      default -> Bench.CONDUCTS;
    };
  }
}
