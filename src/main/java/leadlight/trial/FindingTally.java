package leadlight.trial;

import java.util.List;
import leadlight.model.FindingKind;
import leadlight.statistics.Rate;

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
    FindingKind kind, Rate missed, Rate unjudged, Rate named, Rate calledInError) {

  /** Counts the joints of found rows. */
  public static FindingTally of(FindingKind kind, List<JointOutcome> joints) {
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
        new Rate(with(mine, JointResult.MISSED).size(), mine.size()),
        new Rate(with(mine, JointResult.UNJUDGED).size(), mine.size()),
        new Rate(naming(kind, caught), caught.size()),
        new Rate(naming(kind, with(good, JointResult.FALSE_CALL)), good.size()));
  }

  private static List<JointOutcome> with(List<JointOutcome> joints, JointResult result) {
    return joints.stream().filter(joint -> joint.result() == result).toList();
  }

  private static int naming(FindingKind kind, List<JointOutcome> joints) {
    return (int) joints.stream().filter(joint -> joint.names(kind)).count();
  }
}
