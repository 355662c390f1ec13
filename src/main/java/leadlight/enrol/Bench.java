package leadlight.enrol;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.data.Hash;
import leadlight.data.JsonText;
import leadlight.enrol.learn.Alike;
import leadlight.enrol.learn.Distances;
import leadlight.enrol.learn.EnrolTuning;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.enrol.learn.JointFeatures;
import leadlight.enrol.learn.Proof;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.joint.BenchOpinion;
import leadlight.model.joint.BenchOpinion.Side;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.numeric.Logistic;

/** An enrolled bench: judges photos that are as those were that it was shown. */
public final class Bench {

  private static final int COLOUR = 1;
  private static final String VERSION = ", version ";

  private final Enrolment enrolment;
  private final EnrolTuning tuning = EnrolTuning.builtIn();
  private final Alike alike = new Alike(tuning);
  private final List<Shown> leads;
  private final List<Shown> near;
  private final Proof proof;
  private final Distances distances;

  /** Takes an enrolment. */
  public Bench(Enrolment enrolment) {
    this.enrolment = enrolment;
    this.leads = enrolment.proof();
    this.near = enrolment.joints().stream().filter(it -> kind(it) != Kind.RECORDED).toList();
    this.proof = Proof.of(enrolment, tuning);
    this.distances = new Distances(enrolment.cloud().spreads());
  }

  /** Name and version, as "ring-lamp, version 2". */
  public String words() {
    return enrolment.bench() + VERSION + enrolment.version();
  }

  /** What tells it from all others, as "ring, version 2, " and the hash of all that it rests on. */
  public String identity() {
    return words() + ", " + Hash.sha256(JsonText.of(enrolment).getBytes(StandardCharsets.UTF_8));
  }

  /** Whether that tells a bench of a name, whatever its version: names have no comma. */
  public static boolean isOf(String identity, String name) {
    return identity.startsWith(name + VERSION);
  }

  /** What it rests on. */
  public Enrolment enrolment() {
    return enrolment;
  }

  /** What it proves. */
  public Proof proof() {
    return proof;
  }

  /** Whether it vouches and calls: enough was shown, all of it on one bench, and borders follow. */
  public boolean vouches() {
    return proof.enough() && bordered() && apart().isEmpty();
  }

  /** Whether both kinds have a border. */
  boolean bordered() {
    return enrolment.lines().stream().anyMatch(it -> it.solderedBelow().isPresent())
        && enrolment.lines().stream().anyMatch(it -> it.unsolderedAbove().isPresent());
  }

  /**
   * In which respect sound photos differ from unsoldered ones, if no two of them are alike, or
   * "make" if the general opinions count on some of the photos only.
   */
  public Optional<String> apart() {
    return alike.apart(settings(true), settings(false));
  }

  private List<Setting> settings(boolean soldered) {
    return leads.stream()
        .filter(it -> it.soldered() == soldered)
        .map(it -> enrolment.photos().get(it.photo()).setting())
        .distinct()
        .toList();
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
        double general = tuning.general(look.joints().get(i).general());
        opinions.add(opinion(joints.get(i), general));
      }
    }
    return new EnrolledRow(enrolment.bench(), notAs, opinions, note(notAs));
  }

  /**
   * The chance that nothing holds a joint, by the line of all photos shown: for counting, also
   * where too little was shown to judge by it.
   */
  public double chance(RowLook look, int pin) {
    double general = tuning.general(look.joints().get(pin - 1).general());
    float[] features = JointFeatures.of(look.pictures()).get(pin - 1);
    return enrolment
        .whole()
        .map(line -> Logistic.of(line.of(general, features)))
        .orElse(Double.NaN);
  }

  private Note note(Optional<String> notAs) {
    String name = enrolment.bench();
    if (!vouches()) {
      return new NoteOfRow.NotYetEnrolled(name, enrolment.version());
    }
    return notAs
        .<Note>map(why -> new NoteOfRow.NotAsEnrolled(name, enrolment.version(), why))
        .orElseGet(
            () ->
                new NoteOfRow.AsEnrolled(
                    name,
                    enrolment.version(),
                    proof.unsoldered(),
                    proof.unsolderedPhotos(),
                    proof.upTo()));
  }

  /** What it says of a joint, the general opinion as it counts. */
  BenchOpinion opinion(float[] features, double general) {
    double mean =
        enrolment.lines().stream()
            .mapToDouble(fold -> fold.line().of(general, features))
            .average()
            .orElse(0);
    double chance = Logistic.of(mean);
    return new BenchOpinion(
        likeLeads(features) ? side(features, general) : Side.UNLIKE_SHOWN, chance);
  }

  private Kind kind(Shown joint) {
    return enrolment.photos().get(joint.photo()).kind();
  }

  /** Near enough to a lead that was shown, and to none of the bare lands nearer. */
  private boolean likeLeads(float[] features) {
    Shown nearest = distances.nearest(features, near);
    double distance = distances.between(features, nearest.features());
    return kind(nearest) != Kind.BARE
        && distance <= tuning.likeTo().value() * enrolment.cloud().joint();
  }

  private Side side(float[] features, double general) {
    boolean soldered = bordered();
    boolean unsoldered = bordered();
    for (Fold fold : enrolment.lines()) {
      double at = fold.line().of(general, features);
      soldered &= fold.solderedBelow().map(border -> at < border).orElse(true);
      unsoldered &= fold.unsolderedAbove().map(border -> at > border).orElse(true);
    }
    return soldered == unsoldered ? Side.BETWEEN : soldered ? Side.SOLDERED : Side.UNSOLDERED;
  }

  /**
   * In which respect the photo is not as those shown, if it is not: it must be as one that has
   * unsoldered joints, or nothing was proven of its like, and as one that has sound ones.
   */
  private Optional<String> notAs(RowLook look, List<float[]> joints) {
    return alike
        .notAs(look.setting(), settings(false))
        .or(() -> alike.notAs(look.setting(), settings(true)))
        .or(() -> look(joints));
  }

  private Optional<String> look(List<float[]> joints) {
    List<Double> away = new ArrayList<>();
    double colour = 0;
    double all = 0;
    for (float[] joint : joints) {
      Shown nearest = distances.nearest(joint, leads);
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
