package leadlight.trial;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import leadlight.model.Evidence;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;

/** What Leadlight said of a joint, in a line. */
public final class Opinion {

  private static final int MOST_EVIDENCE = 3;

  private Opinion() {}

  /** As "unjudged: possibly open (chance 31 %) [open 0.31, insufficient 0.12]". */
  public static String words(GradedJoint joint) {
    StringBuilder text = new StringBuilder(joint.verdict().id());
    String findings =
        String.join(
            ", ",
            joint.findings().stream().map(finding -> finding.kind().id()).distinct().toList());
    text.append(findings.isEmpty() ? "" : " " + findings);
    joint.unjudgedBecause().ifPresent(why -> text.append(": ").append(start(why)));
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

  /** The reason without its advice, which takes more room than a list or a close-up has. */
  private static String start(String why) {
    int advice = why.indexOf(": ");
    return advice < 0 ? why : why.substring(0, advice);
  }

  private static String words(Evidence evidence) {
    String other = evidence.kind() == FindingKind.BRIDGE ? " to " + evidence.neighbourPin() : "";
    return String.format(
        Locale.ROOT, "%s%s %.2f", evidence.kind().id(), other, evidence.probability());
  }
}
