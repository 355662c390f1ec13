package leadlight.grade;

import java.util.List;
import leadlight.model.Evidence;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.RowSpec;

/**
 * Judges measured joints by one set of limits in one product class. A fault that the photo shows is
 * stated; one that it leaves possible makes the joint unjudged, with the way to settle it; limits
 * of length are decided with the measure's uncertainty (JCGM 106:2012).
 */
public final class Grader {

  private final AcceptanceSet limits;
  private final int productClass;
  private final Decision decision = Decision.builtIn();

  /**
   * Takes the limits and the class.
   *
   * @param productClass 1, 2 or 3
   */
  public Grader(AcceptanceSet limits, int productClass) {
    this.limits = limits;
    this.productClass = productClass;
  }

  /** The joints with their verdicts, in the order given. */
  public List<GradedJoint> grade(RowSpec spec, List<Joint> joints) {
    boolean lampShowsFillets = lampShowsFillets(joints);
    return joints.stream()
        .map(
            joint ->
                new JointGrading(limits, productClass, decision, joint).grade(lampShowsFillets))
        .toList();
  }

  /**
   * Whether this photo draws fillets at all: some joints of the row must show one. Where none does,
   * either all are open or the light hides the slopes, and from the photo alone nobody can tell
   * which.
   */
  private boolean lampShowsFillets(List<Joint> joints) {
    long judged = joints.stream().filter(joint -> joint.unfitBecause().isEmpty()).count();
    long wetted =
        joints.stream()
            .filter(joint -> joint.unfitBecause().isEmpty())
            .filter(joint -> joint.evidence().stream().noneMatch(this::speaksOfMissingSolder))
            .count();
    return wetted >= decision.witnessShare().value() * judged;
  }

  private boolean speaksOfMissingSolder(Evidence evidence) {
    return JointGrading.LACKS_SOLDER.contains(evidence.kind())
        && evidence.probability() >= decision.doubtFrom().value();
  }
}
