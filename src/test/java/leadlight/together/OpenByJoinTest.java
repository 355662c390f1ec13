package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.grade.limits.Rule;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.row.Lead;
import org.junit.jupiter.api.Test;

class OpenByJoinTest {

  private static final Rule OPEN =
      AcceptanceSet.load(AcceptanceSet.DEFAULT_ID).rule(FindingKind.OPEN, 2);

  @Test
  void aBridgeStaysADefectWhereAShopTakesAnOpenForLess() {
    Rule mild = new Rule(Verdict.PROCESS_INDICATOR, OPEN.basis(), Optional.empty());
    GradedJoint joined = OpenByJoin.of(bridged(), 0.95, new NoteOfPhoto.Moves(40, 5), mild);
    assertThat(joined.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(joined.findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.OPEN, FindingKind.BRIDGE);
  }

  private static GradedJoint bridged() {
    PointPx at = new PointPx(0, 0);
    Finding bridge =
        new Finding(
            FindingKind.BRIDGE,
            List.of(1, 2),
            Verdict.DEFECT,
            0.99,
            OptionalDouble.empty(),
            Optional.empty(),
            List.of(),
            "",
            "");
    Joint joint =
        new Joint(
            new Lead(1, at, at, at, at, 1, 0, 0),
            Map.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    return new GradedJoint(joint, Verdict.DEFECT, List.of(bridge), List.of(), List.of(), List.of());
  }
}
