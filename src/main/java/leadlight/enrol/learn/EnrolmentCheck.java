package leadlight.enrol.learn;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadlight.enrol.learn.Enrolment.Cloud;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Line;
import leadlight.enrol.learn.Enrolment.Photo;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.Enrolment.Shown;

/** Refuses an enrolment whose parts do not fit each other: such a file may have been lent. */
final class EnrolmentCheck {

  private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

  private final List<Photo> photos;
  private final List<Shown> joints;

  EnrolmentCheck(List<Photo> photos, List<Shown> joints) {
    this.photos = photos;
    this.joints = joints;
  }

  /**
   * Looks through all of it.
   *
   * @throws IllegalArgumentException with what does not fit
   */
  void check(List<Fold> lines, Optional<Line> whole, Cloud cloud) {
    photos.forEach(this::photo);
    long hashes = photos.stream().map(Photo::sha256).distinct().count();
    need(hashes == photos.size(), "photos: one is there twice");
    Set<List<Integer>> places = new HashSet<>();
    for (Shown joint : joints) {
      joint(joint);
      need(
          places.add(List.of(joint.photo(), joint.pin())),
          "joints: pin %d of photo %d is there twice".formatted(joint.pin(), joint.photo()));
    }
    List<Shown> leads = Enrolment.leads(photos, joints);
    need(whole.isPresent() == ShrunkLine.both(leads), "whole: there once both kinds were shown");
    whole.ifPresent(it -> line("whole", it));
    lines(lines, leads);
    cloud(cloud);
  }

  private void photo(Photo photo) {
    need(HASH.matcher(photo.sha256()).matches(), "photos: sha256 has 64 digits 0 to f, small");
    Setting it = photo.setting();
    boolean right =
        it.pitchPx() > 0
            && it.blurPitch().orElse(0.0) >= 0
            && finite(it.pitchPx(), it.blurPitch().orElse(0.0), it.dark(), it.bright());
    need(right, "photos: the setting of %s is none".formatted(photo.file()));
    features("photos: row of " + photo.file(), photo.row());
  }

  private void joint(Shown joint) {
    String where = "joints: pin %d of photo %d".formatted(joint.pin(), joint.photo());
    need(joint.pin() >= 1, where + ": pins count from 1");
    need(joint.photo() >= 0 && joint.photo() < photos.size(), where + ": there is no such photo");
    need(finite(joint.general()), where + ": general must be finite");
    features(where, joint.features());
    Kind kind = photos.get(joint.photo()).kind();
    boolean fits = kind.mixed() || joint.soldered() == (kind == Kind.SOUND);
    need(fits, where + ": is not what its photo was shown as");
  }

  private static void features(String where, float[] features) {
    need(
        features.length == JointFeatures.COUNT,
        "%s: has %d numbers, needs %d".formatted(where, features.length, JointFeatures.COUNT));
    boolean finite = IntStream.range(0, features.length).allMatch(i -> finite(features[i]));
    need(finite, where + ": its numbers must be finite");
  }

  /** A line for each photo that leaves both kinds when it is left out, with all its borders. */
  private void lines(List<Fold> lines, List<Shown> leads) {
    Set<Integer> needed = Learning.leftOut(photos.size(), leads);
    List<Integer> there = lines.stream().map(Fold::photo).toList();
    need(
        there.size() == needed.size()
            && needed.containsAll(there)
            && Set.copyOf(there).equals(needed),
        "lines: needed for photos "
            + needed.stream().sorted().map(String::valueOf).collect(Collectors.joining(", ")));
    for (Fold fold : lines) {
      String where = "lines: photo " + fold.photo();
      line(where, fold.line());
      border(where + ": soldered_below", fold, fold.solderedBelow(), false, leads);
      border(where + ": unsoldered_above", fold, fold.unsolderedAbove(), true, leads);
    }
  }

  private static void border(
      String where, Fold fold, Optional<Double> border, boolean soldered, List<Shown> leads) {
    boolean drawn =
        leads.stream().anyMatch(it -> it.photo() == fold.photo() && it.soldered() == soldered);
    need(border.isPresent() == drawn, where + " must " + (drawn ? "" : "not ") + "be there");
    need(finite(border.orElse(0.0)), where + " must be finite");
  }

  private static void line(String where, Line line) {
    need(
        line.weights().length == JointFeatures.COUNT,
        "%s: has %d weights, needs %d"
            .formatted(where, line.weights().length, JointFeatures.COUNT));
    need(
        finite(line.weights()) && finite(line.shift(), line.general()),
        where + ": its numbers must be finite");
  }

  private static void cloud(Cloud cloud) {
    boolean right =
        cloud.spreads().length == JointFeatures.BLOCKS.size()
            && finite(cloud.spreads())
            && Arrays.stream(cloud.spreads()).allMatch(it -> it > 0)
            && finite(cloud.joint(), cloud.row())
            && Math.min(cloud.joint(), cloud.row()) >= 0;
    need(
        right,
        "cloud: needs %d spreads above 0 and distances from 0"
            .formatted(JointFeatures.BLOCKS.size()));
  }

  private static boolean finite(double... numbers) {
    return Arrays.stream(numbers).allMatch(Double::isFinite);
  }

  private static void need(boolean holds, String otherwise) {
    if (!holds) {
      throw new IllegalArgumentException(otherwise);
    }
  }
}
