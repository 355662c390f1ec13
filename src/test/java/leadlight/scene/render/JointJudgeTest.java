package leadlight.scene.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.solids.RowLayout;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Class 2 limits by IPC-A-610 table 8-5 as the project's figures give them. */
class JointJudgeTest {

  @ParameterizedTest
  @CsvSource({"0.12, acceptable", "0.14, limit", "0.16, limit", "0.17, defect"})
  void overhangBeyondHalfTheLeadIsADefectWithAZoneAroundIt(double shiftMm, String class2) {
    // Lead 0.20 on land 0.30: overhang over lead width is (shift - 0.05) / 0.20. The neighbour is
    // left out, as it would stand within the clearance.
    JointPlan shifted = Examples.joint().withPlace(-shiftMm, 0);
    assertThat(judge(shifted, List.of()).class2()).isEqualTo(class2);
  }

  @ParameterizedTest
  @CsvSource({"0.0, 0.50, defect", "0.0, 0.80, limit", "0.6, 1.0, defect"})
  void aFootWettedOnHalfItsLengthIsStarved(double from, double to, String class2) {
    JointPlan starved =
        Examples.joint().with(Condition.STARVED, Examples.fill(-3, 1)).withWetted(from, to, 0);
    Truth.JointTruth truth = judge(starved, List.of());
    assertThat(truth.class2()).isEqualTo(class2);
    assertThat(truth.findings()).containsExactly("insufficient");
  }

  @Test
  void bothEndsOfABridgeAreDefects() {
    List<Bridge> bridge = List.of(new Bridge(1, 0.1, 0.1, 0.2, 3));
    SceneSpec spec = Examples.with(Examples.sound(4), Examples.joint(), bridge);
    List<Truth.JointTruth> joints = SceneRenderer.render(spec).truth().joints();
    assertThat(joints).extracting(Truth.JointTruth::bridgeTo).containsExactly(2, 1, null, null);
    assertThat(joints)
        .extracting(Truth.JointTruth::class2)
        .containsExactly("defect", "defect", "acceptable", "acceptable");
  }

  @Test
  void aMissingLeadHasALandButNoToe() {
    JointPlan gone = Examples.joint().with(Condition.MISSING, Examples.fill(3, 0));
    Truth.JointTruth truth = judge(gone, List.of());
    assertThat(truth.toePx()).isNull();
    assertThat(truth.landToePx()).isNotNull();
    assertThat(truth.class2()).isEqualTo("defect");
  }

  @Test
  void aLeadOverATornLandIsOpenAndTheLandIsGone() {
    JointPlan torn =
        Examples.joint().with(Condition.OPEN, new JointPlan.Fill(false, 0, 0, 0, 0)).withoutLand();
    SceneSpec spec = Examples.with(Examples.sound(3), torn, List.of());
    RowLayout row = new RowLayout(spec);
    assertThat(judge(torn, List.of()).class2()).isEqualTo("defect");
    assertThat(row.insideLand(0, 0, 0, 0)).isNegative();
    assertThat(row.insideOutline(0, 0, 0, 0)).isPositive();
  }

  @Test
  void aBallInAGapIsNamedAtBothItsJointsAndLeavesThemAtTheLimit() {
    SceneSpec spec = Examples.sound(4);
    double middle = new RowLayout(spec).part.landsAtMm()[1] / 2;
    Dirt ball = new Dirt(DirtKind.BALL, middle, 0, 0.05, 1);

    List<Truth.JointTruth> joints =
        SceneRenderer.render(Examples.withDirt(spec, List.of(ball))).truth().joints();

    assertThat(joints.subList(0, 2))
        .allSatisfy(joint -> assertThat(joint.findings()).containsExactly("solder-ball"))
        .extracting(Truth.JointTruth::class2)
        .containsOnly("limit");
    assertThat(joints.get(3).findings()).isNull();
  }

  private static Truth.JointTruth judge(JointPlan first, List<Bridge> bridges) {
    SceneSpec spec = Examples.with(Examples.sound(3), first, bridges);
    return SceneRenderer.render(spec).truth().joints().get(0);
  }
}
