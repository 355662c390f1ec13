package leadlight.enrol;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import leadlight.enrol.Enrolment.Fold;
import leadlight.enrol.Enrolment.Setting;
import leadlight.enrol.Enrolment.Shown;
import leadlight.model.BenchOpinion;
import leadlight.model.BenchOpinion.Side;
import leadlight.model.EnrolledRow;
import leadlight.model.Note;
import leadlight.model.Opinions;
import leadlight.model.UserError;

/** An enrolled bench: judges photos that are as those were that it was shown. */
public final class Bench {

  private static final int COLOUR = 1;

  private final Enrolment enrolment;
  private final EnrolTuning tuning = EnrolTuning.builtIn();
  private final Proof proof;
  private final Distances distances;

  /** Takes an enrolment. */
  public Bench(Enrolment enrolment) {
    this.enrolment = enrolment;
    this.proof = Proof.of(enrolment, tuning);
    this.distances = new Distances(enrolment.cloud().spreads());
  }

  /** Name and version, as "ring-lamp, version 2". */
  public String words() {
    return enrolment.bench() + ", version " + enrolment.version();
  }

  /** What it rests on. */
  public Enrolment enrolment() {
    return enrolment;
  }

  /** What it proves. */
  public Proof proof() {
    return proof;
  }

  /** Whether it vouches and calls: enough was shown, and all of it on one bench. */
  public boolean vouches() {
    return proof.enough() && apart().isEmpty();
  }

  /**
   * In which respect all sound photos differ from all unsoldered ones, if they do: what tells them
   * apart may then be that and not the solder.
   */
  public Optional<String> apart() {
    List<Setting> sound = settings(true);
    List<Setting> unsoldered = settings(false);
    if (noPair(sound, unsoldered, this::sameScale)) {
      return Optional.of("scale");
    }
    if (noPair(sound, unsoldered, this::sameFocus)) {
      return Optional.of("focus");
    }
    return noPair(sound, unsoldered, this::sameLight) ? Optional.of("light") : Optional.empty();
  }

  private List<Setting> settings(boolean soldered) {
    return enrolment.joints().stream()
        .filter(it -> it.soldered() == soldered)
        .map(it -> enrolment.photos().get(it.photo()).setting())
        .distinct()
        .toList();
  }

  private static boolean noPair(
      List<Setting> sound, List<Setting> unsoldered, BiPredicate<Setting, Setting> same) {
    return sound.stream().noneMatch(a -> unsoldered.stream().anyMatch(b -> same.test(a, b)));
  }

  private boolean sameScale(Setting a, Setting b) {
    double ratio = Math.max(a.pitchPx(), b.pitchPx()) / Math.min(a.pitchPx(), b.pitchPx());
    return ratio <= tuning.scaleTo().value();
  }

  private boolean sameFocus(Setting a, Setting b) {
    return Math.abs(a.blurPitch() - b.blurPitch()) <= tuning.blurTo().value();
  }

  private boolean sameLight(Setting a, Setting b) {
    double apart = Math.max(Math.abs(a.dark() - b.dark()), Math.abs(a.bright() - b.bright()));
    return apart <= tuning.lightTo().value();
  }

  /**
   * Refuses opinions by another reader than those that it was learned by.
   *
   * @throws UserError if they are
   */
  public Bench checked(String reader, Opinions opinions) {
    if (!enrolment.reader().equals(reader)) {
      throw new UserError(
          "bench %s was enrolled with another reader (%s, now %s); enrol it again from its photos"
              .formatted(enrolment.bench(), enrolment.reader(), reader));
    }
    if (!enrolment.opinions().equals(opinions.id())) {
      throw new UserError(
          "bench %s was enrolled by opinions \"%s\", not \"%s\"; ask as it was enrolled"
              .formatted(enrolment.bench(), enrolment.opinions(), opinions.id()));
    }
    return this;
  }

  /** What it says of a row. */
  public EnrolledRow of(RowLook look) {
    List<float[]> joints = JointFeatures.of(look.pictures());
    Optional<String> notAs = vouches() ? notAs(look, joints) : Optional.empty();
    List<BenchOpinion> opinions = new ArrayList<>();
    if (vouches() && notAs.isEmpty()) {
      for (int i = 0; i < joints.size(); i++) {
        opinions.add(opinion(joints.get(i), look.joints().get(i).general()));
      }
    }
    return new EnrolledRow(enrolment.bench(), notAs, opinions, note(notAs));
  }

  /**
   * The chance that nothing holds a joint, by the line of all photos shown: for counting, also
   * where too little was shown to judge by it.
   */
  public double chance(RowLook look, int pin) {
    double general = look.joints().get(pin - 1).general();
    float[] features = JointFeatures.of(look.pictures()).get(pin - 1);
    return enrolment
        .whole()
        .map(line -> 1 / (1 + Math.exp(-line.of(general, features))))
        .orElse(Double.NaN);
  }

  private Note note(Optional<String> notAs) {
    String name = enrolment.bench();
    if (!vouches()) {
      return new Note.NotYetEnrolled(name, enrolment.version());
    }
    return notAs
        .<Note>map(why -> new Note.NotAsEnrolled(name, enrolment.version(), why))
        .orElseGet(
            () ->
                new Note.AsEnrolled(
                    name,
                    enrolment.version(),
                    proof.unsoldered(),
                    proof.unsolderedPhotos(),
                    proof.upTo()));
  }

  private BenchOpinion opinion(float[] features, double general) {
    double mean =
        enrolment.lines().stream()
            .mapToDouble(fold -> fold.line().of(general, features))
            .average()
            .orElseThrow();
    double chance = 1 / (1 + Math.exp(-mean));
    double distance = distances.nearest(features, enrolment.joints(), it -> true);
    if (distance > tuning.likeTo().value() * enrolment.cloud().joint()) {
      return new BenchOpinion(Side.UNLIKE_SHOWN, chance);
    }
    return new BenchOpinion(side(features, general), chance);
  }

  private Side side(float[] features, double general) {
    boolean soldered = true;
    boolean unsoldered = true;
    for (Fold fold : enrolment.lines()) {
      double at = fold.line().of(general, features);
      soldered &= fold.solderedBelow().map(border -> at < border).orElse(true);
      unsoldered &= fold.unsolderedAbove().map(border -> at > border).orElse(true);
    }
    return soldered == unsoldered ? Side.BETWEEN : soldered ? Side.SOLDERED : Side.UNSOLDERED;
  }

  /** In which respect the photo is not as those shown, if it is not. */
  private Optional<String> notAs(RowLook look, List<float[]> joints) {
    Setting setting = look.setting();
    List<Setting> shown = enrolment.photos().stream().map(Enrolment.Photo::setting).toList();
    if (shown.stream().noneMatch(it -> sameScale(it, setting))) {
      return Optional.of("scale");
    }
    double softest = shown.stream().mapToDouble(Setting::blurPitch).max().orElseThrow();
    if (setting.blurPitch() > softest + tuning.blurTo().value()) {
      return Optional.of("focus");
    }
    if (shown.stream().noneMatch(it -> sameLight(it, setting))) {
      return Optional.of("light");
    }
    return look(joints);
  }

  private Optional<String> look(List<float[]> joints) {
    List<Double> away = new ArrayList<>();
    double colour = 0;
    double all = 0;
    for (float[] joint : joints) {
      Shown nearest = distances.nearest(joint, enrolment.joints());
      double distance = distances.between(joint, nearest.features());
      away.add(distance);
      colour += distances.inBlock(COLOUR, joint, nearest.features());
      all += JointFeatures.BLOCKS.size() * distance * distance;
    }
    if (Distances.middle(away) <= tuning.rowLikeTo().value() * enrolment.cloud().row()) {
      return Optional.empty();
    }
    return Optional.of(2 * colour > all ? "colour" : "shade");
  }
}
