package leadlight.grade;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Evidence;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Opinions;
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
  private final Weighing weighing;

  /**
   * Takes the limits and the class.
   *
   * @param productClass 1, 2 or 3
   * @param opinions whose opinion on the solder counts
   */
  public Grader(AcceptanceSet limits, int productClass, Opinions opinions) {
    this.limits = limits;
    this.productClass = productClass;
    this.weighing = new Weighing(opinions);
  }

  /** The joints with their verdicts, in the order given. */
  public List<GradedJoint> grade(RowSpec spec, List<Joint> joints) {
    List<List<Evidence>> evidence =
        joints.stream().map(joint -> weighing.evidence(joint, spec.leads())).toList();
    boolean lampShowsFillets = lampShowsFillets(joints, evidence);
    List<GradedJoint> graded = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      graded.add(
          new JointGrading(limits, productClass, decision, weighing, joints.get(i))
              .grade(evidence.get(i), lampShowsFillets));
    }
    return graded;
  }

  /**
   * Whether this photo draws fillets at all: some joints of the row must show one. Where none does,
   * either all are open or the light hides the slopes, and from the photo alone nobody can tell
   * which.
   */
  private boolean lampShowsFillets(List<Joint> joints, List<List<Evidence>> evidence) {
    int judged = 0;
    int wetted = 0;
    for (int i = 0; i < joints.size(); i++) {
      if (joints.get(i).unfitBecause().isEmpty()) {
        judged++;
        wetted += evidence.get(i).stream().anyMatch(this::speaksOfMissingSolder) ? 0 : 1;
      }
    }
    return wetted >= decision.witnessShare().value() * judged;
  }

  private boolean speaksOfMissingSolder(Evidence evidence) {
    return JointGrading.LACKS_SOLDER.contains(evidence.kind())
        && evidence.probability() >= decision.doubtFrom().value();
  }
}
