package leadlight.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.Evidence;
import leadlight.model.FaultChances;
import leadlight.model.FindingKind;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Lead;
import leadlight.model.Measure;
import leadlight.model.Opinions;
import leadlight.model.PointPx;
import leadlight.model.Quantity;
import leadlight.model.Reading;
import leadlight.model.RowSpec;
import leadlight.model.Unit;
import leadlight.model.Verdict;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class TwoOpinionsTest {

  private static final TwoOpinions.Weights EVEN = new TwoOpinions.Weights(1, 1, 0);
  private static final Offset<Double> CLOSE = Offset.offset(1e-12);
  private static final RowSpec SPEC =
      RowSpec.plain(4, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  /** Odds of 9 to 1 twice are odds of 81 to 1: Bayes' rule for independent evidence. */
  @Test
  void agreementIsSurerThanEitherOpinion() {
    assertThat(EVEN.both(0.9, 0.9)).isEqualTo(81 / 82.0, CLOSE);
    assertThat(EVEN.both(0.1, 0.1)).isEqualTo(1 / 82.0, CLOSE);
  }

  @Test
  void equalAndOppositeOpinionsAreADoubt() {
    assertThat(EVEN.both(0.9, 0.1)).isEqualTo(0.5, CLOSE);
  }

  /** 99 to 1 against 1 to 9 leaves 11 to 1. */
  @Test
  void theStrongerOpinionDecidesByWhatItOutweighs() {
    assertThat(EVEN.both(0.99, 0.1)).isEqualTo(11 / 12.0, CLOSE);
    assertThat(EVEN.both(0.1, 0.99)).isEqualTo(11 / 12.0, CLOSE);
  }

  @Test
  void certaintyIsCappedSoThatNoOpinionIsDeaf() {
    assertThat(EVEN.both(1, 0.01)).isLessThan(0.85);
  }

  @Test
  void inTheShippedWeightsMoreChanceNeverMeansLess() {
    TwoOpinions shipped = TwoOpinions.builtIn();
    for (TwoOpinions.Weights weights :
        List.of(
            shipped.missing(),
            shipped.unwetted(),
            shipped.excess(),
            shipped.bridge(),
            shipped.ball(),
            shipped.overhang())) {
      assertThat(weights.measures()).isNotNegative();
      assertThat(weights.reader()).isPositive();
    }
  }

  private static FaultChances unwetted(double chance) {
    return new FaultChances(0.001, chance, 0.9, 0.001, 0.001, 0.001, 0.001, 0.001, 0.001);
  }

  private static Joint joint(int pin, double measures, double reader, boolean unlike) {
    PointPx at = new PointPx(pin, 0);
    List<Evidence> evidence =
        unwetted(measures).named(pin, 4, true).stream()
            .map(it -> new Evidence(it.kind(), it.chance(), it.neighbourPin(), "step 0.4"))
            .toList();
    return new Joint(
        new Lead(pin, at, at, at, at, 1, 0, 0),
        Map.of(),
        evidence,
        Optional.empty(),
        Optional.of(unwetted(measures)),
        Optional.of(
            new Reading(
                unwetted(reader),
                unlike ? 0.99 : 0.01,
                unlike,
                OptionalDouble.empty(),
                Optional.empty())));
  }

  private static GradedJoint graded(Opinions opinions, Joint first) {
    List<Joint> row =
        List.of(
            first,
            joint(2, 0.01, 0.01, false),
            joint(3, 0.01, 0.01, false),
            joint(4, 0.01, 0.01, false));
    return new Grader(AcceptanceSet.load("ipc-a-610"), 2, opinions).grade(SPEC, row).get(0);
  }

  @Test
  void bothSureOfAFaultCallIt() {
    GradedJoint graded = graded(Opinions.BOTH, joint(1, 0.97, 0.97, false));

    assertThat(graded.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(graded.findings().get(0).kind()).isEqualTo(FindingKind.OPEN);
    assertThat(graded.findings().get(0).evidence()).contains("step 0.4");
  }

  @Test
  void aHalfSureReaderAgainstTheMeasuresLeavesADoubtThatNamesBoth() {
    GradedJoint graded = graded(Opinions.BOTH, joint(1, 0.02, 0.5, false));

    assertThat(graded.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(graded.unjudgedBecause().orElseThrow())
        .contains("measures 2 %, second reader 50 %")
        .contains("press the lead sideways");
  }

  @Test
  void anyOneOpinionCanBeAskedAlone() {
    Joint joint = joint(1, 0.97, 0.01, false);

    assertThat(graded(Opinions.MEASURES, joint).verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(graded(Opinions.READER, joint).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  @Test
  void aJointUnlikeKnownOnesIsNotJudgedWhateverIsSaidOfIt() {
    for (double chance : new double[] {0.01, 0.97}) {
      GradedJoint graded = graded(Opinions.BOTH, joint(1, chance, chance, true));

      assertThat(graded.verdict()).isEqualTo(Verdict.UNJUDGED);
      assertThat(graded.unjudgedBecause().orElseThrow()).startsWith("unlike known joints");
    }
  }

  /** Lead 0.2 mm wide, so that class 2 allows 0.1 mm of overhang. */
  private static Joint overhanging(double overMm, double u, double measures, double reader) {
    PointPx at = new PointPx(1, 0);
    return new Joint(
        new Lead(1, at, at, at, at, 1, 0, 0),
        Map.of(
            Measure.LEAD_WIDTH, new Quantity(0.2, 0.01, Unit.MM),
            Measure.SIDE_OVERHANG, new Quantity(overMm, u, Unit.MM)),
        unwetted(0.001).named(1, 4, true).stream()
            .map(it -> new Evidence(it.kind(), it.chance(), it.neighbourPin(), ""))
            .toList(),
        Optional.empty(),
        Optional.of(over(measures)),
        Optional.of(
            new Reading(over(reader), 0.01, false, OptionalDouble.empty(), Optional.empty())));
  }

  private static FaultChances over(double half) {
    return new FaultChances(0.001, 0.001, 0.9, 0.001, 0.001, 0.001, 0.001, half, half);
  }

  @Test
  void anOverhangThatTheMeasureCannotDecideIsDecidedByASureReader() {
    GradedJoint over = graded(Opinions.BOTH, overhanging(0.1, 0.04, 0.5, 0.99));
    GradedJoint within = graded(Opinions.BOTH, overhanging(0.1, 0.04, 0.5, 0.001));

    assertThat(over.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(over.findings().get(0).kind()).isEqualTo(FindingKind.SIDE_OVERHANG);
    assertThat(over.findings().get(0).evidence())
        .contains("0.100 mm (u 0.040)", "measures 50 %, second reader 99 %");
    assertThat(within.verdict()).isEqualTo(Verdict.ACCEPTABLE);
    assertThat(graded(Opinions.MEASURES, overhanging(0.1, 0.04, 0.5, 0.99)).verdict())
        .isEqualTo(Verdict.UNJUDGED);
  }

  @Test
  void aReaderThatSeesAnOverhangWhereTheMeasureSeesNoneIsNotPassedOver() {
    assertThat(graded(Opinions.BOTH, overhanging(0, 0.02, 1e-6, 0.99)).verdict())
        .isNotEqualTo(Verdict.ACCEPTABLE);
  }

  @Test
  void anOverhangThatStaysOpenNamesBothOpinionsInBrackets() {
    GradedJoint graded = graded(Opinions.BOTH, overhanging(0.1, 0.04, 0.5, 0.05));

    assertThat(graded.verdict()).isEqualTo(Verdict.UNJUDGED);
    assertThat(graded.unjudgedBecause().orElseThrow())
        .contains("cannot be decided (measures 50 %, second reader 5 %); measure it");
  }

  @Test
  void withoutTheReaderNothingIsUnlike() {
    assertThat(graded(Opinions.MEASURES, joint(1, 0.01, 0.01, true)).verdict())
        .isEqualTo(Verdict.ACCEPTABLE);
  }
}
