package leadlight.grade;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.joint.Reading;
import leadlight.model.remark.Doubt;

/** The grading of one joint: collects findings, doubts and grounds, then weighs them. */
final class JointGrading {

  /** Kinds that are spoken of by the opinions' chances. */
  private static final Set<FindingKind> OPINED =
      Set.of(
          FindingKind.MISSING_LEAD,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.EXCESS,
          FindingKind.BRIDGE,
          FindingKind.SOLDER_BALL);

  private final RowRules rules;
  private final Decision decision;
  private final Joint joint;
  private final Weighing.Weighed opinion;
  private final JointFindings gathered;
  private final SolderSeen solder;
  private final OverhangLimit overhang;
  private final MetalInGap metal;

  JointGrading(RowRules rules, Joint joint, Weighing.Weighed opinion) {
    this.rules = rules;
    this.decision = rules.decision();
    this.joint = joint;
    this.opinion = opinion;
    this.overhang = new OverhangLimit(rules, joint, opinion);
    this.gathered = new JointFindings(rules, joint, opinion);
    this.solder = new SolderSeen(gathered);
    this.metal = new MetalInGap(gathered);
  }

  /** The verdict. */
  GradedJoint grade() {
    gathered.findings().addAll(metal.findings());
    if (joint.unfitBecause().filter(Doubt.Covered.class::isInstance).isPresent()) {
      return worst() == Verdict.DEFECT
          ? graded(Verdict.DEFECT, List.of())
          : graded(Verdict.UNJUDGED, List.of(joint.unfitBecause().orElseThrow()));
    }
    coarseFaults();
    if (joint.unfitBecause().isPresent()) {
      gathered.doubts().add(0, joint.unfitBecause().get());
    } else if (!gathered.seen(FindingKind.MISSING_LEAD)) {
      fineFaults();
    }
    boolean unlike = !solder.likeShown() && opinion.reading().map(Reading::unlike).orElse(false);
    if (unlike) {
      gathered.doubts().add(0, new Doubt.UnlikeKnown());
    }
    gathered
        .findings()
        .sort(
            Comparator.comparing(Finding::verdict).thenComparing(Finding::probability).reversed());
    return verdict(unlike);
  }

  /** Whole leads and metal between them: what a coarse photo shows, too. */
  private void coarseFaults() {
    for (Chances.Fault fault : gathered.faults()) {
      if (fault.kind().coarse() && !metal.called(fault)) {
        weigh(fault);
      }
    }
    if (!gathered.seen(FindingKind.MISSING_LEAD)) {
      overhang.finding().ifPresent(gathered.findings()::add);
      overhang.doubt().ifPresent(gathered.doubts()::add);
    }
  }

  private void fineFaults() {
    solder.leadSeen();
    solder.wetting();
    solder.room();
    for (Chances.Fault fault : gathered.faults()) {
      if (fault.kind() == FindingKind.EXCESS) {
        weigh(fault);
      }
    }
    gathered.state(
        new Chances.Fault(
            FindingKind.SOLDER_BALL, 0, opinion.both().of(Question.BALL), OptionalDouble.empty()));
    joint.evidence().stream()
        .filter(evidence -> !OPINED.contains(evidence.kind()))
        .forEach(
            it ->
                gathered.state(
                    new Chances.Fault(it.kind(), 0, it.probability(), OptionalDouble.empty())));
    solder.known();
  }

  /** A fault that both opinions are asked of; strong differences are never weighed out. */
  private void weigh(Chances.Fault fault) {
    Question question = question(fault);
    if (gathered.defect(fault) && opinion.differ(question)) {
      gathered.doubts().add(gathered.differ(fault, question));
    } else if (nothingToCompare(fault)) {
      gathered.doubts().add(gathered.possible(fault, question));
    } else if (!gathered.state(fault) && gathered.defect(fault)) {
      Chances.Fault likely = metal.surely(fault).orElse(fault);
      if (likely.chance() >= opinion.doubtFrom()) {
        gathered.doubts().add(gathered.possible(likely, question));
      }
    }
  }

  /**
   * On a make of photo that the opinions do not know, leads flat on their lands may look like bare
   * lands. One that is missing differs from its neighbours; if all look so, nobody can tell.
   */
  private boolean nothingToCompare(Chances.Fault fault) {
    return fault.kind() == FindingKind.MISSING_LEAD
        && rules.unfamiliarPhoto()
        && rules.bareThroughout()
        && fault.chance() >= decision.seenFrom().value();
  }

  private Question question(Chances.Fault fault) {
    return switch (fault.kind()) {
      case MISSING_LEAD -> Question.MISSING;
      case EXCESS -> Question.EXCESS;
      default ->
          fault.neighbourPin() < joint.pin() ? Question.BRIDGE_BEFORE : Question.BRIDGE_AFTER;
    };
  }

  /** A joint unlike all that is known is not judged, but for metal that crosses a gap. */
  private GradedJoint verdict(boolean unlike) {
    Verdict worst = worst();
    if (worst == Verdict.DEFECT && (!unlike || metal.called())) {
      return graded(worst, List.of());
    }
    if (worst == Verdict.UNJUDGED && gathered.doubts().isEmpty()) {
      gathered.doubts().add(new Doubt.ToSettle(gathered.findings().get(0).kind()));
    }
    return gathered.doubts().isEmpty()
        ? graded(worst, List.of())
        : graded(Verdict.UNJUDGED, gathered.doubts().stream().distinct().toList());
  }

  private Verdict worst() {
    return gathered.findings().stream()
        .map(Finding::verdict)
        .reduce(Verdict.ACCEPTABLE, Verdict::worse);
  }

  private GradedJoint graded(Verdict verdict, List<Doubt> because) {
    boolean good = verdict == Verdict.ACCEPTABLE || verdict == Verdict.PROCESS_INDICATOR;
    return new GradedJoint(
        joint,
        verdict,
        gathered.findings(),
        overhang.checks(),
        because,
        good ? gathered.grounds() : List.of());
  }
}
