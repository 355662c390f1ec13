package leadlight.enrol.learn;

import java.util.List;
import java.util.function.Predicate;
import leadlight.enrol.learn.Enrolment.Shown;

/**
 * What a bench's own joints prove; bare lands prove nothing of leads.
 *
 * @param sound sound joints shown
 * @param soundPhotos photos in which they were shown
 * @param unsoldered unsoldered joints shown
 * @param unsolderedPhotos photos in which they were shown
 * @param soundMissing sound joints that are still missing before the bench calls
 * @param unsolderedMissing unsoldered joints that are still missing before it vouches
 * @param soundPhotosMissing photos with sound joints that are still missing
 * @param unsolderedPhotosMissing photos with unsoldered joints that are still missing
 * @param missed chance that the promise does not hold
 */
public record Proof(
    int sound,
    int soundPhotos,
    int unsoldered,
    int unsolderedPhotos,
    int soundMissing,
    int unsolderedMissing,
    int soundPhotosMissing,
    int unsolderedPhotosMissing,
    double missed) {

  public static Proof of(Enrolment enrolment, EnrolTuning tuning) {
    List<Shown> joints = enrolment.proof();
    int sound = count(joints, Shown::soldered);
    int soundPhotos = photos(enrolment, true);
    int unsoldered = joints.size() - sound;
    int unsolderedPhotos = photos(enrolment, false);
    int photosFrom = (int) tuning.photosFrom().value();
    return new Proof(
        sound,
        soundPhotos,
        unsoldered,
        unsolderedPhotos,
        Math.max(0, (int) tuning.soundFrom().value() - sound),
        Math.max(0, needed(tuning) - unsoldered),
        Math.max(0, photosFrom - soundPhotos),
        Math.max(0, photosFrom - unsolderedPhotos),
        tuning.missed().value());
  }

  /** Photos whose joints draw a border. */
  private static int photos(Enrolment enrolment, boolean soldered) {
    return (int)
        enrolment.proof().stream()
            .filter(it -> it.soldered() == soldered)
            .mapToInt(Shown::photo)
            .distinct()
            .count();
  }

  private static int count(List<Shown> joints, Predicate<Shown> which) {
    return (int) joints.stream().filter(which).count();
  }

  /** Whether the bench vouches and calls: never before both kinds were shown well enough. */
  public boolean enough() {
    return soundMissing + unsolderedMissing + soundPhotosMissing + unsolderedPhotosMissing == 0;
  }

  /**
   * Share of unsoldered joints that may pass, with 95 % confidence, where the border lies at or
   * below the least of the n shown: 1 - 0.05^(1/n), nearly 3/n (the tolerance bound of Wilks 1941,
   * Determination of sample sizes for setting tolerance limits, a border at the least of n).
   */
  public double upTo() {
    return unsoldered == 0 ? 1 : 1 - Math.pow(missed, 1.0 / unsoldered);
  }

  /** The same if each photo counted as one: the worst case of joints that go together. */
  public double upToByPhotos() {
    return unsolderedPhotos == 0 ? 1 : 1 - Math.pow(missed, 1.0 / unsolderedPhotos);
  }

  /** Joints below all of which the border must lie for a promise to hold. */
  private static int needed(EnrolTuning tuning) {
    return (int)
        Math.ceil(Math.log(tuning.missed().value()) / Math.log1p(-tuning.promise().value()));
  }
}
