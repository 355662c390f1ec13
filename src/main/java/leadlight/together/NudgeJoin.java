package leadlight.together;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import leadlight.grade.AcceptanceSet;
import leadlight.grade.Rule;
import leadlight.model.Doubt;
import leadlight.model.Finding;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Note;
import leadlight.model.Nudge;
import leadlight.model.Nudge.Motion;
import leadlight.model.ScoredPhoto;
import leadlight.model.Verdict;

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
    List<GradedJoint> joints =
        rest.joints().stream()
            .map(joint -> joined(joint, nudge.leads().get(joint.pin() - 1), open))
            .toList();
    return new ScoredPhoto(
        rest.photo(),
        rest.settings(),
        rest.row(),
        rest.view(),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        rest.rowNotes(),
        rest.fitness(),
        Stream.concat(rest.notVisible().stream(), Stream.of(new Note.TornLand())).toList(),
        rest.cautions());
  }

  private static GradedJoint joined(GradedJoint joint, Nudge.Moved lead, Rule open) {
    return switch (lead.motion()) {
      case MOVES -> moves(joint, lead, open);
      case FIRM -> firm(joint, lead);
      case NOT_TOUCHED, CANNOT_TELL -> joint;
    };
  }

  private static GradedJoint moves(GradedJoint joint, Nudge.Moved lead, Rule open) {
    Finding finding =
        new Finding(
            FindingKind.OPEN,
            List.of(joint.pin()),
            open.verdict(),
            SURE,
            OptionalDouble.empty(),
            Optional.of(new Note.Moves(Math.abs(lead.shiftUm().orElse(0)), lead.uUm().orElse(0))),
            List.of(),
            open.basis().words(),
            open.settleBy().orElse(""));
    List<Finding> findings = new ArrayList<>(List.of(finding));
    joint.findings().stream().filter(f -> !ofWetting(f.kind())).forEach(findings::add);
    return new GradedJoint(
        joint.joint(), open.verdict(), findings, joint.checks(), List.of(), List.of());
  }

  /** The one-sided level at which motion is said (JCGM 106:2012). */
  private static final double SURE = 0.95;

  private static GradedJoint firm(GradedJoint joint, Nudge.Moved lead) {
    double toUm = Math.abs(lead.shiftUm().orElse(0)) + lead.smallestSeenUm().orElse(0) / 2;
    boolean saidOpen = joint.findings().stream().anyMatch(f -> f.kind() == FindingKind.OPEN);
    List<Finding> findings =
        joint.findings().stream().filter(f -> f.kind() != FindingKind.OPEN).toList();
    List<Doubt> doubts = new ArrayList<>(joint.doubts().stream().filter(d -> !ofOpen(d)).toList());
    if (saidOpen) {
      doubts.add(new Doubt.FirmYetOpen(toUm));
    }
    Verdict worst =
        findings.stream().map(Finding::verdict).reduce(Verdict.ACCEPTABLE, Verdict::worse);
    if (worst == Verdict.DEFECT) {
      return new GradedJoint(joint.joint(), worst, findings, joint.checks(), List.of(), List.of());
    }
    if (!doubts.isEmpty()) {
      return new GradedJoint(
          joint.joint(), Verdict.UNJUDGED, findings, joint.checks(), doubts, List.of());
    }
    if (worst == Verdict.UNJUDGED) {
      doubts.add(new Doubt.ToSettle(findings.get(0).kind()));
      return new GradedJoint(joint.joint(), worst, findings, joint.checks(), doubts, List.of());
    }
    List<Note> grounds = new ArrayList<>(joint.grounds());
    grounds.add(new Note.Firm(toUm));
    return new GradedJoint(joint.joint(), worst, findings, joint.checks(), List.of(), grounds);
  }

  private static boolean ofWetting(FindingKind kind) {
    return kind == FindingKind.OPEN || kind == FindingKind.INSUFFICIENT;
  }

  /** Doubts that come to this: joined or merely set down. */
  private static boolean ofOpen(Doubt doubt) {
    return doubt instanceof Doubt.FilletNotSeen
        || doubt instanceof Doubt.UnfamiliarPhoto
        || doubt instanceof Doubt.Possible possible && possible.kind() == FindingKind.OPEN
        || doubt instanceof Doubt.OpinionsDiffer differ && differ.kind() == FindingKind.OPEN;
  }

  /** Whether any lead moves, or one that was touched cannot be told. */
  public static Optional<Verdict> worst(Nudge nudge) {
    if (nudge.leads().stream().anyMatch(lead -> lead.motion() == Motion.MOVES)) {
      return Optional.of(Verdict.DEFECT);
    }
    return nudge.leads().stream().anyMatch(lead -> lead.motion() == Motion.CANNOT_TELL)
        ? Optional.of(Verdict.UNJUDGED)
        : Optional.empty();
  }
}
