package leadlight.record;

import java.util.List;
import leadlight.model.GradedJoint;
import leadlight.model.Verdict;

/**
 * A joint with all that was said of it.
 *
 * @param tool the tool's opinion; its evidence is in the findings, {@code Joint.evidence} is empty
 * @param overrules people's opinions, the latest last
 * @param bench what the bench said, the latest last
 */
public record RecordedJoint(GradedJoint tool, List<Overrule> overrules, List<BenchResult> bench) {

  /** Copies the lists. */
  public RecordedJoint {
    overrules = List.copyOf(overrules);
    bench = List.copyOf(bench);
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return tool.pin();
  }

  /** What counts: the last person's verdict, else the tool's. */
  public Verdict verdict() {
    return overrules.isEmpty() ? tool.verdict() : overrules.get(overrules.size() - 1).verdict();
  }
}
