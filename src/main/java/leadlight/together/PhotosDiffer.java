package leadlight.together;

import java.util.List;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.result.ScoredPhoto;

/**
 * Joints that one photo alone shows sound and another faulty. Chances that are joined would settle
 * such a joint one way or the other, and each way several photos were worse than one of them: it is
 * left to the bench.
 */
final class PhotosDiffer {

  private PhotosDiffer() {}

  /**
   * The joints, those that photos contradict each other about unjudged.
   *
   * @param joints as all photos together have them
   * @param photos what each showed alone
   */
  static List<GradedJoint> said(List<GradedJoint> joints, List<ScoredPhoto> photos) {
    return joints.stream()
        .map(joint -> differ(joint.pin(), photos).map(d -> unjudged(joint, d)).orElse(joint))
        .toList();
  }

  private static GradedJoint unjudged(GradedJoint joint, Doubt doubt) {
    return new GradedJoint(
        joint.joint(), Verdict.UNJUDGED, List.of(), joint.checks(), List.of(doubt), List.of());
  }

  private static Optional<Doubt> differ(int pin, List<ScoredPhoto> photos) {
    Optional<ScoredPhoto> sound = first(photos, pin, Verdict.ACCEPTABLE);
    Optional<ScoredPhoto> faulty = first(photos, pin, Verdict.DEFECT);
    return sound.flatMap(
        good ->
            faulty.map(
                bad -> new Doubt.PhotosDiffer(file(good), worst(alone(bad, pin)), file(bad))));
  }

  private static Optional<ScoredPhoto> first(List<ScoredPhoto> photos, int pin, Verdict verdict) {
    return photos.stream().filter(photo -> alone(photo, pin).verdict() == verdict).findFirst();
  }

  private static FindingKind worst(GradedJoint joint) {
    return joint.findings().get(0).kind();
  }

  private static GradedJoint alone(ScoredPhoto photo, int pin) {
    return photo.joints().get(pin - 1);
  }

  private static String file(ScoredPhoto photo) {
    return photo.photo().file();
  }
}
