package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.Evidence;
import leadlight.model.Finding;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Lead;
import leadlight.model.Measure;
import leadlight.model.Opinions;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.RowSpec;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import org.junit.jupiter.api.Test;

class GraderTest {

  private static final RowSpec SPEC =
      RowSpec.plain(10, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  private static Joint joint(
      int pin, Map<Measure, Quantity> measures, Optional<String> unfit, Evidence... evidence) {
    PointPx at = new PointPx(pin, 0);
    return new Joint(new Lead(pin, at, at, at, at, 1, 0, 0), measures, List.of(evidence), unfit);
  }

  private static Evidence evidence(FindingKind kind, double chance) {
    return new Evidence(kind, chance, kind == FindingKind.BRIDGE ? 2 : 0, "words", List.of());
  }

  private static Quantity mm(double value, double u) {
    return new Quantity(value, u, Unit.MM);
  }

  /** The joint as pin 1 of a row whose other joints are sound. */
  private static GradedJoint graded(int productClass, Joint first) {
    List<Joint> row = new ArrayList<>(List.of(first));
    for (int pin = 2; pin <= 10; pin++) {
      row.add(joint(pin, Map.of(), Optional.empty()));
    }
    return new Grader(AcceptanceSet.load("ipc-a-610"), productClass, Opinions.BOTH)
        .grade(SPEC, row)
        .get(0);
  }

  private static GradedJoint graded(Evidence... evidence) {
    return graded(2, joint(1, Map.of(), Optional.empty(), evidence));
  }

  private static GradedJoint withOverhang(int productClass, double mm) {
    return graded(
        productClass,
        joint(
            1,
            Map.of(
                Measure.LEAD_WIDTH, mm(0.2, 0.01),
                Measure.FOOT_LENGTH, mm(1.4, 0.02),
                Measure.SIDE_OVERHANG, mm(mm, 0.01)),
            Optional.empty()));
  }

  @Test
  void aFaultThatIsLikelierThanNotIsStated() {
    GradedJoint joint = graded(evidence(FindingKind.OPEN, 0.6));
    assertThat(joint.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(joint.findings()).extracting(Finding::kind).containsExactly(FindingKind.OPEN);
  }

  @Test
  void aFaultThatIsPossibleMakesTheJointUnjudgedWithAWayToSettleIt() {
    GradedJoint joint = graded(evidence(FindingKind.OPEN, 0.3));
    assertThat(joint.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(joint.unjudgedBecause().orElseThrow()).contains("possibly open");
  }

  @Test
  void aFaultThatIsUnlikelyLeavesTheJointAcceptable() {
    assertThat(graded(evidence(FindingKind.OPEN, 0.05)).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  @Test
  void aBridgeNamesBothPins() {
    Finding bridge = graded(evidence(FindingKind.BRIDGE, 0.9)).findings().get(0);
    assertThat(bridge.pins()).containsExactly(1, 2);
    assertThat(bridge.clause()).contains("IPC-A-610J");
  }

  @Test
  void excessIsAProcessIndicatorInClass2AndAcceptableInClass1() {
    Joint excess = joint(1, Map.of(), Optional.empty(), evidence(FindingKind.EXCESS, 0.9));
    assertThat(graded(2, excess).verdict()).isEqualTo(Verdict.PROCESS_INDICATOR);
    assertThat(graded(1, excess).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  /** Limits 0.10 mm in class 2 and 0.05 mm in class 3 for a lead 0.20 mm wide: Table 8-5, A. */
  @Test
  void overhangIsDecidedWithItsUncertainty() {
    assertThat(withOverhang(2, 0.080).verdict()).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(withOverhang(2, 0.095).verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(withOverhang(2, 0.120).verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(withOverhang(3, 0.080).verdict()).isEqualTo(Verdict.DEFECT);
  }

  @Test
  void aJointThatThePhotoDoesNotShowIsNeverCalledGood() {
    GradedJoint joint = graded(2, joint(1, Map.of(), Optional.of("blurred: focus")));
    assertThat(joint.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(joint.unjudgedBecause().orElseThrow()).startsWith("blurred");
  }

  @Test
  void aBridgeIsStatedEvenWhereFilletsCannotBeJudged() {
    Joint coarse = joint(1, Map.of(), Optional.of("too coarse"), evidence(FindingKind.BRIDGE, 0.9));
    assertThat(graded(2, coarse).verdict()).isEqualTo(Verdict.DEFECT);
  }

  @Test
  void whereNoJointOfTheRowShowsAFilletNoneIsCalledOpen() {
    List<Joint> row = new ArrayList<>();
    for (int pin = 1; pin <= 20; pin++) {
      row.add(joint(pin, Map.of(), Optional.empty(), evidence(FindingKind.OPEN, 0.97)));
    }
    List<GradedJoint> graded =
        new Grader(AcceptanceSet.load("ipc-a-610"), 2, Opinions.BOTH).grade(SPEC, row);
    assertThat(graded).extracting(GradedJoint::verdict).containsOnly(Verdict.UNJUDGED);
    assertThat(graded.get(0).unjudgedBecause().orElseThrow()).contains("light hides the slopes");
  }

  @Test
  void twoWettedJointsOfTwentyAreWitnessesEnough() {
    List<Joint> row = new ArrayList<>();
    for (int pin = 1; pin <= 20; pin++) {
      double chance = pin <= 2 ? 0.01 : 0.97;
      row.add(joint(pin, Map.of(), Optional.empty(), evidence(FindingKind.OPEN, chance)));
    }
    List<GradedJoint> graded =
        new Grader(AcceptanceSet.load("ipc-a-610"), 2, Opinions.BOTH).grade(SPEC, row);
    assertThat(graded.subList(2, 20)).extracting(GradedJoint::verdict).containsOnly(Verdict.DEFECT);
    assertThat(graded.subList(0, 2))
        .extracting(GradedJoint::verdict)
        .containsOnly(Verdict.ACCEPTABLE);
  }
}
