package leadlight.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.light.Hit;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.Push;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.solids.PickSolid;
import org.junit.jupiter.api.Test;

class NudgeSetsTest {

  private static final SceneMix MIX = SceneMix.read(Path.of("models/scene/mix-nudge.json"));
  private final List<SceneSpec> set = new NudgeSets(MIX, 7).set(0);

  private static double toe(SceneSpec scene, int land) {
    JointPlan.Pose pose = scene.joints().get(land - 1).pose();
    return pose.shiftMm() + scene.part().footLengthMm() * Math.sin(pose.skewRad());
  }

  @Test
  void theFirstPhotoIsAtRestAndInEachOtherOneLeadMovedByWhatItsTruthSays() {
    SceneSpec rest = set.get(0);
    assertThat(rest.shot().rest()).isTrue();
    assertThat(set).hasSizeGreaterThan(4);
    for (SceneSpec pushed : set.subList(1, set.size())) {
      Push push = pushed.shot().push();
      for (int land = 1; land <= rest.joints().size(); land++) {
        double moved = toe(pushed, land) - toe(rest, land);
        assertThat(moved).isCloseTo(land == push.land() ? push.toeMm() : 0, within(1e-9));
      }
      assertThat(push.loose())
          .isEqualTo(rest.joints().get(push.land() - 1).condition() == Condition.OPEN);
      assertThat(Math.abs(push.toeMm())).isBetween(0.0, push.loose() ? 0.3 : 0.004);
    }
  }

  @Test
  void thePickStandsBesideItsLeadOnTheSideThatItPushesFrom() {
    for (SceneSpec pushed : set.subList(1, set.size())) {
      Push push = pushed.shot().push();
      double lead = pushed.part().landsAtMm()[push.land() - 1] + toe(pushed, push.land());
      assertThat(Math.signum(push.leanRad())).isEqualTo(-Math.signum(push.toeMm()));
      assertThat(Math.abs(push.tipMm()[0] - lead))
          .isBetween(0.3 * pushed.part().leadWidthMm(), pushed.part().pitchMm());
    }
  }

  @Test
  void aLineOfSightThroughTheTipMeetsThePickOnItsUpperSide() {
    SceneSpec pushed = set.get(1);
    Push push = pushed.shot().push();
    PickSolid pick = PickSolid.of(pushed).orElseThrow();
    Hit hit = new Hit();
    double[] tip = push.tipMm();
    assertThat(pick.meet(new double[] {tip[0], tip[1], 0, 0}, hit)).isTrue();
    assertThat(hit.z).isGreaterThanOrEqualTo(tip[2] + push.radiusMm() - 1e-6);
    assertThat(hit.nz).isPositive();
    assertThat(pick.meet(new double[] {tip[0], tip[1] - 0.3, 0, 0}, new Hit())).isFalse();
    assertThat(pick.hides(tip[0], tip[1], 0, 0, 0, 1)).isTrue();
  }
}
