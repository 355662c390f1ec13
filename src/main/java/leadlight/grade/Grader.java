package leadlight.grade;

import java.util.List;
import java.util.Optional;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.RowSpec;
import leadlight.model.Verdict;

/** Placeholder until grading is built: every joint is unjudged. */
public final class Grader {

  /** Takes the limits and the class. */
  public Grader(AcceptanceSet limits, int productClass) {}

  /** Every joint unjudged. */
  public List<GradedJoint> grade(RowSpec spec, List<Joint> joints) {
    return joints.stream()
        .map(
            joint ->
                new GradedJoint(
                    joint,
                    Verdict.UNJUDGED,
                    List.of(),
                    Optional.of(joint.unfitBecause().orElse("grading is not built yet"))))
        .toList();
  }
}
