package leadlight.trial;

import java.util.List;
import leadlight.model.FindingKind;
import leadlight.statistics.ClusterRate;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.truth.TrueClass;

/**
 * The rates of the defects that have one kind of finding, in found rows.
 *
 * @param kind the finding
 * @param missed of the defects with this finding, those called acceptable or process indicator
 * @param unjudged of the same, those unjudged
 * @param named of those caught, the ones for which this very finding was given
 * @param calledInError acceptable joints called a defect with this finding, of all acceptable ones
 */
public record FindingTally(
    FindingKind kind,
    ClusterRate missed,
    ClusterRate unjudged,
    ClusterRate named,
    ClusterRate calledInError) {

  /** Counts the joints of found rows. */
  static FindingTally of(FindingKind kind, List<JointOutcome> joints) {
    List<JointOutcome> mine =
        joints.stream()
            .filter(joint -> joint.truth().class2() == TrueClass.DEFECT)
            .filter(joint -> joint.truth().findings().contains(kind.id()))
            .toList();
    List<JointOutcome> caught = with(mine, JointResult.CAUGHT);
    List<JointOutcome> good =
        joints.stream().filter(joint -> joint.truth().class2() == TrueClass.ACCEPTABLE).toList();
    return new FindingTally(
        kind,
        Tally.rate(mine, joint -> joint.result() == JointResult.MISSED),
        Tally.rate(mine, joint -> joint.result() == JointResult.UNJUDGED),
        Tally.rate(caught, joint -> joint.names(kind)),
        Tally.rate(good, joint -> joint.result() == JointResult.FALSE_CALL && joint.names(kind)));
  }

  private static List<JointOutcome> with(List<JointOutcome> joints, JointResult result) {
    return joints.stream().filter(joint -> joint.result() == result).toList();
  }
}
