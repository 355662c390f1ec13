package leadlight.together;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;

/**
 * A joint that more than its photo showed to be open, whatever it looks like. Other findings keep
 * their say: a bridge stays a defect where a shop's own limits take an open for less.
 */
final class OpenByJoin {

  private OpenByJoin() {}

  /**
   * The joint as an open one; its other findings stay, but for those of wetting.
   *
   * @param because what showed it
   */
  static GradedJoint of(GradedJoint joint, double probability, Note because, Rule open) {
    List<Finding> findings = new ArrayList<>();
    findings.add(
        new Finding(
            FindingKind.OPEN,
            List.of(joint.pin()),
            open.verdict(),
            probability,
            OptionalDouble.empty(),
            Optional.of(because),
            List.of(),
            open.basis().words(),
            open.settleBy().orElse("")));
    joint.findings().stream().filter(f -> !ofWetting(f.kind())).forEach(findings::add);
    Verdict worst = findings.stream().map(Finding::verdict).reduce(open.verdict(), Verdict::worse);
    return new GradedJoint(
        joint.joint(),
        worst,
        findings,
        joint.checks(),
        worst == Verdict.UNJUDGED ? List.of(new Doubt.ToSettle(FindingKind.OPEN)) : List.of(),
        List.of());
  }

  private static boolean ofWetting(FindingKind kind) {
    return kind == FindingKind.OPEN || kind == FindingKind.INSUFFICIENT;
  }
}
