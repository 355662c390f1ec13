package leadlight.model.joint;

import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;

/**
 * A joint with its verdict.
 *
 * @param joint what was measured
 * @param verdict what it means in the chosen class
 * @param findings what was seen, worst first
 * @param checks the measures that were held against limits
 * @param doubts why it is not judged; empty if it is
 * @param grounds what a verdict of acceptable or process indicator rests on; empty otherwise
 */
public record GradedJoint(
    Joint joint,
    Verdict verdict,
    List<Finding> findings,
    List<LimitCheck> checks,
    List<Doubt> doubts,
    List<Note> grounds) {

  /** Copies the lists; an unjudged joint must say why, and no other does. */
  public GradedJoint {
    findings = List.copyOf(findings);
    checks = List.copyOf(checks);
    doubts = List.copyOf(doubts);
    grounds = List.copyOf(grounds);
    if ((verdict == Verdict.UNJUDGED) == doubts.isEmpty()) {
      throw new IllegalArgumentException("exactly an unjudged joint says why it is");
    }
  }

  /** Place in the row, 1 to N. */
  public int pin() {
    return joint.pin();
  }
}
