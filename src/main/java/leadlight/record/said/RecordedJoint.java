package leadlight.record.said;

import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;

/**
 * A joint with all that was said of it.
 *
 * @param tool the tool's opinion; its evidence is in the findings, {@code Joint.evidence} is empty
 * @param overrules people's opinions that stand, the latest last
 * @param bench what the bench said and stands, the latest last
 * @param takenBack what was said and taken back
 */
public record RecordedJoint(
    GradedJoint tool,
    List<Overrule> overrules,
    List<BenchResult> bench,
    List<TakenBack> takenBack) {

  /** Copies the lists. */
  public RecordedJoint {
    overrules = List.copyOf(overrules);
    bench = List.copyOf(bench);
    takenBack = List.copyOf(takenBack);
  }

  /** A joint of which nothing was taken back. */
  public RecordedJoint(GradedJoint tool, List<Overrule> overrules, List<BenchResult> bench) {
    this(tool, overrules, bench, List.of());
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return tool.pin();
  }

  /** What counts, and whose word it is. */
  public Standing standing() {
    return Standing.of(tool, overrules, bench);
  }

  /** The verdict that counts. */
  public Verdict verdict() {
    return standing().joint().verdict();
  }
}
