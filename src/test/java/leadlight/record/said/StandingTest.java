package leadlight.record.said;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.remark.Doubt;
import leadlight.model.row.Lead;
import org.junit.jupiter.api.Test;

/** The bench over a named person over the tool, and no further than either reaches. */
class StandingTest {

  private static final ZonedDateTime NOON =
      ZonedDateTime.of(2026, 11, 28, 12, 0, 0, 0, ZoneOffset.UTC);

  private static GradedJoint joint(Verdict verdict, Finding... findings) {
    PointPx at = new PointPx(1, 1);
    PointPx to = new PointPx(1, 9);
    return new GradedJoint(
        new Joint(
            new Lead(5, to, at, to, at, 1, 0.1, 0.1),
            Map.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        verdict,
        List.of(findings),
        List.of(),
        verdict == Verdict.UNJUDGED ? List.of(new Doubt.Covered()) : List.of(),
        List.of());
  }

  private static Finding finding(FindingKind kind, Integer... pins) {
    return new Finding(
        kind,
        List.of(pins),
        Verdict.DEFECT,
        0.99,
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        "clause",
        "");
  }

  private static BenchResult bench(BenchTest test, String result, int other) {
    return new BenchResult(
        test, result, other == 0 ? OptionalInt.empty() : OptionalInt.of(other), "Ada", NOON);
  }

  private static Overrule says(Verdict verdict) {
    return new Overrule(verdict, Optional.empty(), "seen at 40x", "Bo", NOON);
  }

  private static Standing standing(GradedJoint tool, List<Overrule> said, BenchResult... bench) {
    return new RecordedJoint(tool, said, List.of(bench)).standing();
  }

  @Test
  void aLeadThatMovesIsOpenWhateverAnybodySaw() {
    Standing standing =
        standing(
            joint(Verdict.ACCEPTABLE),
            List.of(says(Verdict.ACCEPTABLE)),
            bench(BenchTest.PROD, "moves", 0));
    assertThat(standing.joint().verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(standing.joint().findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.OPEN);
    assertThat(standing.source()).isEqualTo(Standing.Source.BENCH);
  }

  @Test
  void aFirmLeadIsNotOpenAndNotYetSound() {
    Standing standing =
        standing(
            joint(Verdict.DEFECT, finding(FindingKind.OPEN, 5)),
            List.of(),
            bench(BenchTest.PROD, "firm", 0));
    assertThat(standing.joint().verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(standing.joint().doubts())
        .containsExactly(new Doubt.RuledOut(FindingKind.OPEN, "Ada"));
  }

  @Test
  void aFirmLeadLeavesEveryOtherFault() {
    Standing standing =
        standing(
            joint(Verdict.DEFECT, finding(FindingKind.OPEN, 5), finding(FindingKind.BRIDGE, 5, 6)),
            List.of(),
            bench(BenchTest.PROD, "firm", 0));
    assertThat(standing.joint().verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(standing.joint().findings())
        .extracting(Finding::kind)
        .containsExactly(FindingKind.BRIDGE);
  }

  @Test
  void aPairWithoutAShortIsNoBridgeButAnotherPairMayBe() {
    GradedJoint both =
        joint(Verdict.DEFECT, finding(FindingKind.BRIDGE, 5, 4), finding(FindingKind.BRIDGE, 5, 6));
    Standing one = standing(both, List.of(), bench(BenchTest.METER, "ok", 6));
    assertThat(one.joint().findings()).extracting(Finding::pins).containsExactly(List.of(5, 4));
    assertThat(one.joint().verdict()).isEqualTo(Verdict.DEFECT);
    Standing none =
        standing(both, List.of(), bench(BenchTest.METER, "ok", 6), bench(BenchTest.METER, "ok", 4));
    assertThat(none.joint().verdict()).isEqualTo(Verdict.UNJUDGED);
  }

  @Test
  void theLastResultOfAQuestionCounts() {
    GradedJoint sound = joint(Verdict.ACCEPTABLE);
    assertThat(
            standing(
                    sound,
                    List.of(),
                    bench(BenchTest.METER, "short", 6),
                    bench(BenchTest.METER, "ok", 6))
                .joint()
                .verdict())
        .isEqualTo(Verdict.ACCEPTABLE);
    assertThat(
            standing(
                    sound,
                    List.of(),
                    bench(BenchTest.PROD, "firm", 0),
                    bench(BenchTest.METER, "open", 0))
                .joint()
                .verdict())
        .as("another question is not answered by it")
        .isEqualTo(Verdict.DEFECT);
  }

  @Test
  void aPersonGoesBeforeTheToolAndTheirReasonIsTheGround() {
    Standing standing =
        standing(
            joint(Verdict.DEFECT, finding(FindingKind.OPEN, 5)), List.of(says(Verdict.ACCEPTABLE)));
    assertThat(standing.joint().verdict()).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(standing.joint().findings()).isEmpty();
    assertThat(standing.source()).isEqualTo(Standing.Source.PERSON);
  }

  @Test
  void whatTheBenchFoundRightSaysNothingOfAJointThatNobodyJudged() {
    Standing standing =
        standing(joint(Verdict.UNJUDGED), List.of(), bench(BenchTest.METER, "ok", 0));
    assertThat(standing.joint().verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(standing.joint().doubts()).contains(new Doubt.Covered());
  }
}
