package leadlight.trial;

import java.util.List;
import leadlight.statistics.Rate;

/**
 * The rates of a group of joints of found rows.
 *
 * @param joints counted joints (those at the limit are not)
 * @param missed defects called acceptable or process indicator, of all defects
 * @param falseCalls acceptable joints called a defect, of all acceptable ones
 * @param unjudged unjudged joints, of all counted
 * @param unjudgedDefects unjudged defects, of all defects
 * @param named defects with the right name among their findings, of those caught
 */
public record Tally(
    int joints, Rate missed, Rate falseCalls, Rate unjudged, Rate unjudgedDefects, Rate named) {

  /** Counts a group. */
  public static Tally of(List<JointOutcome> group) {
    List<JointOutcome> counted = group.stream().filter(JointOutcome::counted).toList();
    List<JointOutcome> defects = ofClass(counted, TrueClass.DEFECT);
    List<JointOutcome> good = ofClass(counted, TrueClass.ACCEPTABLE);
    List<JointOutcome> caught =
        defects.stream().filter(joint -> joint.result() == JointResult.CAUGHT).toList();
    int named = (int) caught.stream().filter(JointOutcome::namedRight).count();
    return new Tally(
        counted.size(),
        rate(defects, JointResult.MISSED),
        rate(good, JointResult.FALSE_CALL),
        rate(counted, JointResult.UNJUDGED),
        rate(defects, JointResult.UNJUDGED),
        new Rate(named, caught.size()));
  }

  private static List<JointOutcome> ofClass(List<JointOutcome> joints, TrueClass trueClass) {
    return joints.stream().filter(joint -> joint.truth().class2() == trueClass).toList();
  }

  private static Rate rate(List<JointOutcome> joints, JointResult result) {
    int count = (int) joints.stream().filter(joint -> joint.result() == result).count();
    return new Rate(count, joints.size());
  }
}
