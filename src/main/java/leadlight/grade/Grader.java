package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.RowSpec;

/**
 * Judges measured joints by one set of limits in one product class. A joint is not judged until
 * something was seen: a fault that the photo shows is stated; good is only what shows a lead, room
 * for a fillet and the fillet itself; all else is unjudged, with what is missing and the way to
 * settle it. Limits of length are decided with the measure's uncertainty (JCGM 106:2012).
 */
public final class Grader {

  private final AcceptanceSet limits;
  private final int productClass;
  private final Decision decision = Decision.builtIn();
  private final Weighing weighing;

  /**
   * Takes the limits and the class.
   *
   * @param productClass 1, 2 or 3
   * @param opinions whose opinion on the solder counts
   */
  public Grader(AcceptanceSet limits, int productClass, Opinions opinions) {
    this.limits = limits;
    this.productClass = productClass;
    this.weighing = new Weighing(opinions, decision);
  }

  /**
   * A judged row.
   *
   * @param joints the joints with their verdicts, in the order given
   * @param notes what is to be said of the row as a whole
   */
  public record GradedRow(List<GradedJoint> joints, List<Note> notes) {

    /** Copies the lists. */
    public GradedRow {
      joints = List.copyOf(joints);
      notes = List.copyOf(notes);
    }
  }

  /**
   * Judges a row.
   *
   * @param make whether telling soldered from set down was shown to work on this make of photo
   */
  public GradedRow grade(RowSpec spec, List<Joint> joints, Familiarity make) {
    return grade(spec, joints, make, Optional.empty());
  }

  /**
   * Judges a row with what an enrolled bench says of it.
   *
   * @param make whether telling soldered from set down was shown to work on this make of photo
   * @param enrolled what the bench says, if one was named
   */
  public GradedRow grade(
      RowSpec spec, List<Joint> joints, Familiarity make, Optional<EnrolledRow> enrolled) {
    RowRules rules =
        new RowRules(limits, productClass, decision, spec, make, enrolled, bareThroughout(joints));
    List<GradedJoint> graded =
        joints.stream()
            .map(joint -> new JointGrading(rules, joint, weighing.of(joint)).grade())
            .toList();
    return new GradedRow(graded, notes(graded, rules));
  }

  /** Whether the row's middle joint looks like a land without a lead. */
  private boolean bareThroughout(List<Joint> joints) {
    double[] missing =
        joints.stream().mapToDouble(it -> combined(it).of(Question.MISSING)).sorted().toArray();
    return missing.length > 0 && missing[missing.length / 2] >= decision.seenFrom().value();
  }

  /** Whether on this make of photo nothing is said of wetting. */
  public boolean unfamiliar(Familiarity make) {
    return UnknownMake.is(make, decision);
  }

  /** The opinions on a joint that count, as one. */
  public Chances combined(Joint joint) {
    return weighing.of(joint).both();
  }

  /**
   * Sameness is no proof: where the wetting of most joints is in doubt, the row's typical joint is
   * not surely soldered, and likeness to it says nothing.
   */
  private Optional<Note> likeness(List<GradedJoint> joints, RowRules rules) {
    if (rules.unfamiliarPhoto() && !rules.judged()) {
      return Optional.of(new NoteOfRow.Unfamiliar());
    }
    long fit = joints.stream().filter(it -> it.joint().unfitBecause().isEmpty()).count();
    long doubted = joints.stream().filter(Grader::wettingInDoubt).count();
    return doubted > 0 && doubted >= decision.alikeFrom().value() * fit
        ? Optional.of(new NoteOfRow.AlikeThroughout())
        : Optional.empty();
  }

  private List<Note> notes(List<GradedJoint> joints, RowRules rules) {
    return Stream.of(
            rules.enrolled().map(EnrolledRow::note),
            prodOrder(joints),
            likeness(joints, rules),
            limits.chosenBand().map(band -> band.note(joints, limits.usualBand())))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * A row's notes once more than its photo has settled some joints.
   *
   * @param notes what was said of it by the photo alone
   * @param joints its joints as they are judged now
   */
  public List<Note> notes(List<Note> notes, List<GradedJoint> joints) {
    return Stream.concat(
            prodOrder(joints).stream(),
            notes.stream().filter(note -> !(note instanceof NoteOfRow.ProdOrder)))
        .toList();
  }

  /** In which order to prod the unjudged leads; those that are all as suspect have none. */
  private Optional<Note> prodOrder(List<GradedJoint> joints) {
    List<GradedJoint> unjudged =
        joints.stream().filter(it -> it.verdict() == Verdict.UNJUDGED).toList();
    boolean alike = unjudged.stream().map(this::suspicion).distinct().count() < 2;
    String pins = path(unjudged).stream().map(String::valueOf).collect(Collectors.joining(", "));
    return alike ? Optional.empty() : Optional.of(new NoteOfRow.ProdOrder(pins));
  }

  /**
   * All leads that a prod would tell more of, in the order in which to prod them: the unjudged,
   * then those that look open or short of solder.
   */
  public List<Integer> toProd(List<GradedJoint> joints) {
    List<GradedJoint> unjudged =
        joints.stream().filter(it -> it.verdict() == Verdict.UNJUDGED).toList();
    List<GradedJoint> suspect =
        joints.stream()
            .filter(it -> it.verdict() != Verdict.UNJUDGED)
            .filter(
                it ->
                    it.findings().stream()
                        .anyMatch(f -> JointFindings.LACKS_SOLDER.contains(f.kind())))
            .toList();
    return Stream.of(path(unjudged), path(suspect)).flatMap(List::stream).toList();
  }

  private List<Integer> path(List<GradedJoint> joints) {
    SortedMap<Integer, Double> suspicions = new TreeMap<>();
    joints.forEach(it -> suspicions.put(it.pin(), suspicion(it)));
    return ProdPath.of(suspicions, decision.prodFirst().value());
  }

  /**
   * How suspect a joint is beside the others of its row. On a make of photo on which chances of
   * wetting mean nothing, what is most unlike all known joints is the most suspect.
   */
  public double suspicion(GradedJoint joint) {
    boolean unknownMake = joint.doubts().stream().anyMatch(Doubt.UnfamiliarPhoto.class::isInstance);
    return weighing
        .of(joint.joint())
        .reading()
        .filter(reading -> unknownMake)
        .map(Reading::strangeness)
        .orElseGet(() -> combined(joint.joint()).notHeld());
  }

  private static boolean wettingInDoubt(GradedJoint joint) {
    return joint.doubts().stream().anyMatch(Grader::ofWetting);
  }

  private static boolean ofWetting(Doubt doubt) {
    return doubt instanceof Doubt.FilletNotSeen
        || doubt instanceof Doubt.BenchUnsure
        || (doubt instanceof Doubt.Possible possible
            && JointFindings.LACKS_SOLDER.contains(possible.kind()))
        || (doubt instanceof Doubt.OpinionsDiffer differ
            && JointFindings.LACKS_SOLDER.contains(differ.kind()));
  }
}
