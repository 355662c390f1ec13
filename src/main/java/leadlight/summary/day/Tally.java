package leadlight.summary.day;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.record.said.RecordedJoint;
import leadlight.text.Messages;
import leadlight.text.Sentences;

/** Counts of joints by verdict and of defect findings by kind; what stands counts. */
public final class Tally {

  private final Map<Verdict, Integer> verdicts = new EnumMap<>(Verdict.class);
  private final Map<FindingKind, Integer> findings = new EnumMap<>(FindingKind.class);

  void add(List<RecordedJoint> joints) {
    for (RecordedJoint joint : joints) {
      verdicts.merge(joint.verdict(), 1, Integer::sum);
      if (joint.verdict() == Verdict.DEFECT) {
        Sentences.spoken(joint.standing().joint().findings()).stream()
            .filter(finding -> finding.verdict() == Verdict.DEFECT)
            .map(Finding::kind)
            .distinct()
            .forEach(kind -> findings.merge(kind, 1, Integer::sum));
      }
    }
  }

  void add(Tally other) {
    other.verdicts.forEach((verdict, count) -> verdicts.merge(verdict, count, Integer::sum));
    other.findings.forEach((kind, count) -> findings.merge(kind, count, Integer::sum));
  }

  /** Joints with this verdict. */
  public int count(Verdict verdict) {
    return verdicts.getOrDefault(verdict, 0);
  }

  /** Defective joints with this finding; one joint may count under several. */
  Map<FindingKind, Integer> findings() {
    return findings;
  }

  /** All joints. */
  public int joints() {
    return verdicts.values().stream().mapToInt(Integer::intValue).sum();
  }

  /** Joints with a verdict other than unjudged. */
  int judged() {
    return joints() - count(Verdict.UNJUDGED);
  }

  /** "open joint 3, solder bridge 1", commonest first; empty if there is no defect. */
  public String findingWords(Messages words) {
    return findings.entrySet().stream()
        .sorted(Map.Entry.<FindingKind, Integer>comparingByValue().reversed())
        .map(entry -> words.get("kind." + entry.getKey().id()) + " " + entry.getValue())
        .reduce((first, second) -> first + ", " + second)
        .orElse("");
  }
}
