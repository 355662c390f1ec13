package leadlight.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Finding;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.Reason;

/** What was gathered of one joint: findings, doubts and grounds, and how each is put. */
final class JointFindings {

  /** Two names of one lack of solder. */
  static final Set<FindingKind> LACKS_SOLDER = Set.of(FindingKind.OPEN, FindingKind.INSUFFICIENT);

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private final RowRules rules;
  private final Joint joint;
  private final Weighing.Weighed opinion;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<Note> grounds = new ArrayList<>();

  JointFindings(RowRules rules, Joint joint, Weighing.Weighed opinion) {
    this.rules = rules;
    this.joint = joint;
    this.opinion = opinion;
  }

  RowRules rules() {
    return rules;
  }

  Joint joint() {
    return joint;
  }

  Weighing.Weighed opinion() {
    return opinion;
  }

  /** What was found so far; grows. */
  List<Finding> findings() {
    return findings;
  }

  /** What is doubted so far; grows. */
  List<Doubt> doubts() {
    return doubts;
  }

  /** What "acceptable" would rest on; grows. */
  List<Note> grounds() {
    return grounds;
  }

  List<Chances.Fault> faults() {
    return opinion.both().faults(joint.pin(), rules.spec().leads());
  }

  boolean defect(Chances.Fault fault) {
    return rules.rule(fault.kind()).verdict() == Verdict.DEFECT;
  }

  boolean seen(FindingKind kind) {
    return findings.stream().anyMatch(finding -> finding.kind() == kind);
  }

  /** States a fault that was seen. */
  boolean state(Chances.Fault fault) {
    boolean seen = fault.chance() >= rules.decision().seenFrom().value();
    if (seen) {
      findings.add(finding(fault));
    }
    return seen;
  }

  Doubt differ(Chances.Fault fault, Question question) {
    return new Doubt.OpinionsDiffer(
        fault.kind(),
        fault.neighbourPin(),
        opinion.measures().orElseThrow().of(question),
        opinion.reader().orElseThrow().of(question));
  }

  Doubt possible(Chances.Fault fault, Question question) {
    boolean two = opinion.two();
    return new Doubt.Possible(
        fault.kind(),
        fault.neighbourPin(),
        fault.chance(),
        two ? opinion.measures().orElseThrow().asked(question) : NONE,
        two ? opinion.reader().orElseThrow().asked(question) : NONE);
  }

  Finding finding(Chances.Fault fault) {
    Rule rule = rules.rule(fault.kind());
    Optional<Evidence> measured =
        joint.evidence().stream()
            .filter(it -> sameQuestion(it.kind(), fault.kind()))
            .filter(it -> it.neighbourPin() == fault.neighbourPin())
            .findFirst();
    List<Reason> reasons = measured.map(Evidence::reasons).orElse(List.of());
    return new Finding(
        fault.kind(),
        fault.neighbourPin() == 0
            ? List.of(joint.pin())
            : List.of(joint.pin(), fault.neighbourPin()),
        rule.verdict(),
        fault.chance(),
        fault.share(),
        measured.flatMap(Evidence::measured),
        reasons,
        rule.basis().words(),
        rule.settleBy().orElse(""));
  }

  private static boolean sameQuestion(FindingKind a, FindingKind b) {
    return a == b || (LACKS_SOLDER.contains(a) && LACKS_SOLDER.contains(b));
  }
}
