package leadlight.trial.outcome;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Remark;

/** What Leadlight said of a joint, in a line. */
public final class Opinion {

  private static final int MOST_EVIDENCE = 3;

  private Opinion() {}

  /** As "unjudged: possible open, covered [open 0.31, insufficient 0.12]". */
  public static String words(GradedJoint joint) {
    StringBuilder text = new StringBuilder(joint.verdict().id());
    String findings =
        String.join(
            ", ",
            joint.findings().stream().map(finding -> finding.kind().id()).distinct().toList());
    text.append(findings.isEmpty() ? "" : " " + findings);
    text.append(joint.doubts().isEmpty() ? "" : ": " + doubts(joint));
    List<String> evidence =
        joint.joint().evidence().stream()
            .sorted(
                Comparator.comparingDouble(Evidence::probability)
                    .reversed()
                    .thenComparing(Evidence::kind))
            .limit(MOST_EVIDENCE)
            .map(Opinion::words)
            .toList();
    text.append(evidence.isEmpty() ? "" : " [" + String.join(", ", evidence) + "]");
    return text.toString();
  }

  /** What the doubts are about, as "possible open, covered". */
  public static String doubts(GradedJoint joint) {
    return joint.doubts().stream().map(Doubt::topic).distinct().collect(Collectors.joining(", "));
  }

  /** A remark by its code and arguments, as "other-count leads=19 shown=20". */
  static String code(Remark remark) {
    StringBuilder text = new StringBuilder(remark.code());
    remark.args().forEach((name, value) -> text.append(" " + name + "=" + value));
    return text.toString();
  }

  private static String words(Evidence evidence) {
    String other = evidence.kind() == FindingKind.BRIDGE ? " to " + evidence.neighbourPin() : "";
    return String.format(
        Locale.ROOT, "%s%s %.2f", evidence.kind().id(), other, evidence.probability());
  }
}
