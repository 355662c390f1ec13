package leadlight.trial;

import java.util.List;
import java.util.function.Predicate;
import leadlight.statistics.ClusterRate;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.truth.TrueClass;

/**
 * The rates of a group of joints of found rows. Joints of one photo are alike, so intervals are by
 * photo.
 *
 * @param joints counted joints (those at the limit are not)
 * @param missed defects called acceptable or process indicator, of all defects
 * @param falseCalls acceptable joints called a defect, of all acceptable ones
 * @param unjudged unjudged joints, of all counted
 * @param unjudgedDefects unjudged defects, of all defects
 * @param named defects with the right name among their findings, of those caught
 */
public record Tally(
    int joints,
    ClusterRate missed,
    ClusterRate falseCalls,
    ClusterRate unjudged,
    ClusterRate unjudgedDefects,
    ClusterRate named) {

  /** Counts a group. */
  public static Tally of(List<JointOutcome> group) {
    List<JointOutcome> counted = group.stream().filter(JointOutcome::counted).toList();
    List<JointOutcome> defects = ofClass(counted, TrueClass.DEFECT);
    List<JointOutcome> good = ofClass(counted, TrueClass.ACCEPTABLE);
    List<JointOutcome> caught =
        defects.stream().filter(joint -> joint.result() == JointResult.CAUGHT).toList();
    return new Tally(
        counted.size(),
        rate(defects, JointResult.MISSED),
        rate(good, JointResult.FALSE_CALL),
        rate(counted, JointResult.UNJUDGED),
        rate(defects, JointResult.UNJUDGED),
        rate(caught, JointOutcome::namedRight));
  }

  private static List<JointOutcome> ofClass(List<JointOutcome> joints, TrueClass trueClass) {
    return joints.stream().filter(joint -> joint.truth().class2() == trueClass).toList();
  }

  private static ClusterRate rate(List<JointOutcome> joints, JointResult result) {
    return rate(joints, joint -> joint.result() == result);
  }

  /** Joints that are so, of all, by photo. */
  static ClusterRate rate(List<JointOutcome> joints, Predicate<JointOutcome> so) {
    ClusterRate.Builder rate = new ClusterRate.Builder();
    joints.forEach(joint -> rate.add(joint.photo(), so.test(joint)));
    return rate.rate();
  }
}
