package leadlight.trial.outcome;

import java.util.OptionalDouble;
import leadlight.model.FindingKind;
import leadlight.model.joint.GradedJoint;
import leadlight.trial.truth.JointTruth;

/**
 * One joint of a found row: truth beside opinion.
 *
 * @param photo on which photo, the cluster in which rates count it
 * @param truth what is true
 * @param opinion what Leadlight said
 * @param result what that was worth
 * @param lateralPx reported minus true toe along the row; empty if the lead is missing
 * @param axialPx reported minus true toe along the lead, outwards; empty if the lead is missing
 */
public record JointOutcome(
    String photo,
    JointTruth truth,
    GradedJoint opinion,
    JointResult result,
    OptionalDouble lateralPx,
    OptionalDouble axialPx) {

  /** True if one of the findings is of a kind that the truth names. */
  public boolean namedRight() {
    return opinion.findings().stream()
        .anyMatch(finding -> truth.findings().contains(finding.kind().id()));
  }

  /** True if the findings hold this kind. */
  public boolean names(FindingKind kind) {
    return opinion.findings().stream().anyMatch(finding -> finding.kind() == kind);
  }

  /** True if the joint counts towards the rates. */
  public boolean counted() {
    return result != JointResult.NOT_COUNTED;
  }
}
