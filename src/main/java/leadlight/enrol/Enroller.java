package leadlight.enrol;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import leadlight.enrol.learn.EnrolTuning;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Photo;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.enrol.learn.JointFeatures;
import leadlight.enrol.learn.Learning;
import leadlight.model.UserError;

/** Takes photos of a bench whose joints are known, and makes an enrolment of them. */
public final class Enroller {

  private final EnrolTuning tuning = EnrolTuning.builtIn();
  private final String bench;
  private final String reader;
  private final String opinions;
  private final List<Taken> taken = new ArrayList<>();

  /**
   * Begins an enrolment.
   *
   * @param reader the reader's version
   * @param opinions whose opinion is the general one
   */
  public Enroller(String bench, String reader, String opinions) {
    this.bench = bench;
    this.reader = reader;
    this.opinions = opinions;
  }

  private record Taken(Photo photo, List<Shown> joints) {}

  /**
   * Begins with what was shown before.
   *
   * @throws UserError if that was learned by another reader
   */
  public void goOn(Enrolment before) {
    goOn(before, Set.of());
  }

  /**
   * The same without photos that are to be shown anew.
   *
   * @param anew their hashes
   */
  public void goOn(Enrolment before, Set<String> anew) {
    if (!before.reader().equals(reader) || !before.opinions().equals(opinions)) {
      throw new UserError(
          "bench %s was enrolled with another reader; name all its photos again with --anew"
              .formatted(bench));
    }
    for (int i = 0; i < before.photos().size(); i++) {
      int photo = i;
      if (anew.contains(before.photos().get(i).sha256())) {
        continue;
      }
      taken.add(
          new Taken(
              before.photos().get(i),
              before.joints().stream().filter(it -> it.photo() == photo).toList()));
    }
  }

  /**
   * Shows a photo.
   *
   * @param soldered what is known of its pins
   * @return joints that were taken
   * @throws UserError if it was shown before, or shows no joint that can be learned from
   */
  public int show(
      String file,
      String sha256,
      Enrolment.Kind kind,
      RowLook look,
      Map<Integer, Boolean> soldered) {
    List<float[]> features = JointFeatures.of(look.pictures());
    List<Shown> joints = new ArrayList<>();
    new TreeMap<>(soldered)
        .forEach(
            (pin, held) -> {
              RowLook.Joint joint = look.joints().get(pin - 1);
              if (joint.fit()) {
                double general = tuning.general(joint.general());
                joints.add(
                    new Shown(0, pin, held, general, JointFeatures.rounded(features.get(pin - 1))));
              }
            });
    if (joints.isEmpty()) {
      throw new UserError(
          file + ": none of its joints shows well enough to learn from; focus, and light it anew");
    }
    Taken now =
        new Taken(
            new Photo(file, sha256, kind, look.setting(), JointFeatures.mean(features)), joints);
    refuseTwice(now);
    taken.add(now);
    return joints.size();
  }

  private void refuseTwice(Taken now) {
    for (Taken before : taken) {
      if (before.photo().sha256().equals(now.photo().sha256())
          || same(before.joints(), now.joints())
          || sameRow(before.photo().row(), now.photo().row())) {
        throw new UserError(
            "%s shows the same as %s, which was shown already; a second photo must be taken anew,"
                    .formatted(now.photo().file(), before.photo().file())
                + " the board put down again");
      }
    }
  }

  /** Whether two photos are one: a copy, saved again or brightened. */
  private boolean same(List<Shown> before, List<Shown> now) {
    double sum = 0;
    int count = 0;
    for (Shown one : now) {
      for (Shown other : before) {
        if (one.pin() == other.pin()) {
          for (int i = 0; i < JointFeatures.COUNT; i++) {
            sum += Math.abs(one.features()[i] - other.features()[i]);
            count++;
          }
        }
      }
    }
    return count > 0 && sum / count <= tuning.sameTo().value();
  }

  /** The same by all joints of the row, also where none was shown of both photos. */
  private boolean sameRow(float[] before, float[] now) {
    double sum = 0;
    for (int i = 0; i < now.length; i++) {
      sum += Math.abs(before[i] - now[i]);
    }
    return sum / now.length <= tuning.sameRowTo().value();
  }

  /**
   * The enrolment of all that was shown.
   *
   * @param version its number
   * @throws UserError if both kinds look swapped
   */
  public Enrolment enrolment(int version) {
    List<Taken> inOrder =
        taken.stream().sorted(Comparator.comparing(it -> it.photo().sha256())).toList();
    List<Photo> photos = new ArrayList<>();
    List<Shown> joints = new ArrayList<>();
    for (Taken photo : inOrder) {
      photo.joints().forEach(it -> joints.add(at(photos.size(), it)));
      photos.add(photo.photo());
    }
    refuseSwapped(Enrolment.leads(photos, joints));
    return new Learning(photos, joints, tuning).enrolment(bench, version, reader, opinions);
  }

  private static Shown at(int photo, Shown joint) {
    return new Shown(photo, joint.pin(), joint.soldered(), joint.general(), joint.features());
  }

  private void refuseSwapped(List<Shown> joints) {
    Optional<Double> right = right(joints);
    if (right.isPresent() && right.get() <= tuning.swappedTo().value()) {
      throw new UserError(
          "sound and unsoldered look swapped: the general opinions, which count on such photos, say"
              + " the opposite of what was shown; look at the photos and name them anew");
    }
  }

  /** Share of pairs of a sound and an unsoldered joint that the general opinion orders so. */
  private static Optional<Double> right(List<Shown> joints) {
    double right = 0;
    long pairs = 0;
    for (Shown sound : joints) {
      for (Shown unsoldered : joints) {
        boolean counts = sound.soldered() && !unsoldered.soldered();
        if (counts && sound.general() != 0 && unsoldered.general() != 0) {
          right += 0.5 * (1 + Math.signum(unsoldered.general() - sound.general()));
          pairs++;
        }
      }
    }
    return pairs == 0 ? Optional.empty() : Optional.of(right / pairs);
  }

  /** Whether the general opinions can tell if kinds were swapped. */
  public static boolean checkable(Enrolment enrolment) {
    return right(enrolment.leads()).isPresent();
  }
}
