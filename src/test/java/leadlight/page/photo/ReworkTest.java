package leadlight.page.photo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.row.RowSpec;
import leadlight.page.ScoredRow;
import leadlight.report.words.Task;
import org.junit.jupiter.api.Test;

class ReworkTest {

  private static final RowSpec ROW = ScoredRow.SCORED.settings().row();

  private final List<GradedJoint> joints = sound();

  private static List<GradedJoint> sound() {
    List<GradedJoint> joints = new ArrayList<>(ScoredRow.SCORED.joints());
    for (int pin = 1; pin <= joints.size(); pin++) {
      ScoredRow.set(joints, pin, Verdict.ACCEPTABLE, List.of());
    }
    return joints;
  }

  private void fault(FindingKind kind, int pin) {
    ScoredRow.set(
        joints, pin, Verdict.DEFECT, List.of(ScoredRow.finding(kind, Verdict.DEFECT, pin)));
  }

  private void bridge(int pin) {
    for (int at : List.of(pin, pin + 1)) {
      int other = at == pin ? pin + 1 : pin;
      ScoredRow.set(
          joints,
          at,
          Verdict.DEFECT,
          List.of(ScoredRow.finding(FindingKind.BRIDGE, Verdict.DEFECT, at, other)));
    }
  }

  private Rework rework() {
    return Rework.of(joints, ROW, Optional.of(ScoredRow.CONNECTOR));
  }

  @Test
  void bridgesComeFirstThenOpenStarvedAndMisplacedLeads() {
    fault(FindingKind.SIDE_OVERHANG, 1);
    fault(FindingKind.INSUFFICIENT, 3);
    fault(FindingKind.OPEN, 5);
    bridge(7);
    assertThat(rework().steps())
        .extracting(Rework.Step::task)
        .containsExactly(Task.BRIDGES, Task.OPENS, Task.STARVED, Task.MISPLACED);
  }

  @Test
  void eachToolIsTakenUpOnce() {
    fault(FindingKind.EXCESS, 1);
    fault(FindingKind.INSUFFICIENT, 3);
    fault(FindingKind.OPEN, 5);
    bridge(7);
    fault(FindingKind.SIDE_OVERHANG, 12);
    fault(FindingKind.MISSING_LEAD, 15);
    assertThat(rework().steps())
        .extracting(step -> step.task().tool())
        .containsExactly("tweezers", "wick", "wick", "iron", "iron", "hot-air");
  }

  @Test
  void aMissingLeadGoesBeforeAllElse() {
    bridge(7);
    fault(FindingKind.MISSING_LEAD, 12);
    assertThat(rework().steps().get(0).task()).isEqualTo(Task.MISSING);
  }

  @Test
  void theBridgeThatDoesMostHarmIsTheFirst() {
    bridge(3);
    bridge(17);
    bridge(11);
    assertThat(rework().steps().get(0).pairs())
        .extracting(Rework.Pair::pin)
        .as("+5 V to ground, two data lanes, a pair that the file does not name")
        .containsExactly(17, 3, 11);
  }

  @Test
  void nearLeadsShareAPassAndFarOnesDoNot() {
    for (int pin : List.of(2, 3, 5, 9)) {
      fault(FindingKind.OPEN, pin);
    }
    assertThat(rework().steps().get(0).passes()).containsExactly(List.of(2, 3, 5), List.of(9));
  }

  @Test
  void soundJointsAreLeftAloneAndDoubtfulOnesSettledFirst() {
    fault(FindingKind.OPEN, 5);
    ScoredRow.set(joints, 6, Verdict.UNJUDGED, List.of(), new Doubt.Glare(0.5));
    Rework rework = rework();
    assertThat(rework.settle()).containsExactly(6);
    assertThat(rework.leave()).hasSize(17).doesNotContain(5, 6);
  }

  @Test
  void noDefectMeansNoIron() {
    assertThat(rework().steps()).isEmpty();
    assertThat(rework().meter()).extracting(Rework.Pair::pin).startsWith(17, 18, 15, 16);
  }
}
