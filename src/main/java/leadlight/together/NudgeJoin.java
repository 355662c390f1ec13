package leadlight.together;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadlight.grade.Grader;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Nudge;
import leadlight.model.result.Nudge.Motion;
import leadlight.model.result.ScoredPhoto;

/**
 * The nudge joined into the photo's report. A lead that moves is open, whatever the photo looked
 * like. A lead that holds settles a doubt about an open, and nothing else: how much solder there is
 * it does not say.
 */
public final class NudgeJoin {

  private NudgeJoin() {}

  /** The photo at rest, its verdicts with the nudge in view. */
  public static ScoredPhoto of(ScoredPhoto rest, Nudge nudge, AcceptanceSet limits) {
    Rule open = limits.rule(FindingKind.OPEN, rest.settings().productClass());
    Grader grader = new Grader(limits, rest.settings().productClass(), rest.settings().opinions());
    List<GradedJoint> held = held(rest, nudge, grader);
    List<GradedJoint> joints = new ArrayList<>();
    for (int i = 0; i < held.size(); i++) {
      GradedJoint joint = rest.joints().get(i);
      Nudge.Moved lead = nudge.leads().get(joint.pin() - 1);
      joints.add(
          switch (lead.motion()) {
            case MOVES -> moves(joint, lead, open);
            case FIRM -> firm(joint, held.get(i), lead);
            case NOT_TOUCHED, CANNOT_TELL -> joint;
          });
    }
    return new ScoredPhoto(
        rest.photo(),
        rest.settings(),
        rest.row(),
        rest.view(),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        grader.notes(rest.rowNotes(), joints),
        rest.fitness(),
        Stream.concat(rest.notVisible().stream(), Stream.of(new NoteOfPhoto.TornLand())).toList(),
        rest.cautions());
  }

  /** The row graded again, an open joint ruled out where a lead held. */
  private static List<GradedJoint> held(ScoredPhoto rest, Nudge nudge, Grader grader) {
    List<Joint> joints =
        rest.joints().stream()
            .map(GradedJoint::joint)
            .map(
                joint ->
                    nudge.leads().get(joint.pin() - 1).motion() == Motion.FIRM
                        ? notOpen(joint)
                        : joint)
            .toList();
    return grader.grade(rest.settings().row(), joints, JoinedRow.make(rest)).joints();
  }

  /** What is left of each opinion once it is known that the lead is there and not open. */
  private static Joint notOpen(Joint joint) {
    return new Joint(
        joint.lead(),
        joint.measures(),
        joint.evidence(),
        joint.unfitBecause(),
        joint.byMeasures().map(NudgeJoin::notOpen),
        joint
            .byReader()
            .map(
                reading ->
                    new Reading(
                        notOpen(reading.chances()),
                        reading.strangeness(),
                        reading.unlike(),
                        reading.moved())));
  }

  /** Starved, given not open: by the definition of conditional probability. */
  private static Chances notOpen(Chances chances) {
    double unwetted = chances.of(Question.UNWETTED);
    double open = unwetted * chances.of(Question.OPEN);
    double starved = open >= 1 ? 0 : (unwetted - open) / (1 - open);
    return chances.with(Question.UNWETTED, starved).with(Question.OPEN, 0);
  }

  private static GradedJoint moves(GradedJoint joint, Nudge.Moved lead, Rule open) {
    Note moves = new NoteOfPhoto.Moves(Math.abs(lead.shiftUm().orElse(0)), lead.uUm().orElse(0));
    return OpenByJoin.of(joint, SURE, moves, open);
  }

  /** The one-sided level at which motion is said (JCGM 106:2012). */
  private static final double SURE = 0.95;

  /**
   * A lead that held.
   *
   * @param alone what the photo alone said
   * @param held the same with an open joint ruled out
   */
  private static GradedJoint firm(GradedJoint alone, GradedJoint held, Nudge.Moved lead) {
    if (held.verdict() == Verdict.DEFECT) {
      return held;
    }
    double toUm = Math.abs(lead.shiftUm().orElse(0)) + lead.smallestSeenUm().orElse(0) / 2;
    boolean saidOpen = alone.findings().stream().anyMatch(f -> f.kind() == FindingKind.OPEN);
    List<Doubt> doubts =
        held.doubts().stream().map(doubt -> nowOfAmount(doubt, toUm)).distinct().toList();
    if (saidOpen) {
      doubts = Stream.concat(Stream.of(new Doubt.FirmYetOpen(toUm)), doubts.stream()).toList();
    }
    if (!doubts.isEmpty()) {
      return new GradedJoint(
          held.joint(), Verdict.UNJUDGED, held.findings(), held.checks(), doubts, List.of());
    }
    List<Note> grounds = new ArrayList<>(held.grounds());
    grounds.add(new NoteOfPhoto.Firm(toUm));
    return new GradedJoint(
        held.joint(), held.verdict(), held.findings(), held.checks(), List.of(), grounds);
  }

  /** That it is not merely set down is known now; whether it has enough solder is not. */
  private static Doubt nowOfAmount(Doubt doubt, double toUm) {
    return doubt instanceof Doubt.UnfamiliarPhoto || doubt instanceof Doubt.FilletNotSeen
        ? new Doubt.FirmAmountUnknown(toUm)
        : doubt;
  }

  /** What the nudge adds to the row's verdict: a photo that tells of no lead leaves one untold. */
  public static Verdict verdict(ScoredPhoto joined, Nudge nudge) {
    boolean untold =
        nudge.photos().stream().anyMatch(photo -> photo.reason().isPresent())
            || nudge.leads().stream().anyMatch(lead -> lead.motion() == Motion.CANNOT_TELL);
    return untold ? joined.verdict().worse(Verdict.UNJUDGED) : joined.verdict();
  }
}
