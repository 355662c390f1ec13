package leadlight.model;

import java.util.List;
import java.util.Optional;

/**
 * A joint with its verdict.
 *
 * @param joint what was measured
 * @param verdict what it means in the chosen class
 * @param findings what was seen, worst first
 * @param checks the measures that were held against limits
 * @param unjudgedBecause the reason, if the verdict is unjudged
 */
public record GradedJoint(
    Joint joint,
    Verdict verdict,
    List<Finding> findings,
    List<LimitCheck> checks,
    Optional<String> unjudgedBecause) {

  /** Copies the lists; an unjudged joint must say why. */
  public GradedJoint {
    findings = List.copyOf(findings);
    checks = List.copyOf(checks);
    if ((verdict == Verdict.UNJUDGED) != unjudgedBecause.isPresent()) {
      throw new IllegalArgumentException("exactly an unjudged joint says why it is");
    }
  }

  /** A joint of which nothing was held against a limit. */
  public GradedJoint(
      Joint joint, Verdict verdict, List<Finding> findings, Optional<String> unjudgedBecause) {
    this(joint, verdict, findings, List.of(), unjudgedBecause);
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return joint.pin();
  }
}
