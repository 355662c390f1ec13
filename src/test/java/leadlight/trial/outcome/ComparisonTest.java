package leadlight.trial.outcome;

import static leadlight.trial.Truths.joint;
import static leadlight.trial.Truths.missing;
import static leadlight.trial.Truths.opinion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.trial.Truths;
import leadlight.trial.list.SlipList;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ComparisonTest {

  private static final PhotoTruth FIVE =
      Truths.row(
          joint(1, TrueClass.ACCEPTABLE),
          joint(2, TrueClass.ACCEPTABLE),
          joint(3, TrueClass.ACCEPTABLE),
          joint(4, TrueClass.ACCEPTABLE),
          missing(5));

  private static PhotoOutcome moved(double dx, double dy) {
    List<GradedJoint> joints = new ArrayList<>();
    FIVE.joints().forEach(truth -> joints.add(opinion(truth, Verdict.ACCEPTABLE, dx, dy)));
    return Comparison.of(FIVE, Truths.scored(FIVE, joints));
  }

  @ParameterizedTest
  @CsvSource({
    "ACCEPTABLE, ACCEPTABLE, PASSED",
    "ACCEPTABLE, PROCESS_INDICATOR, PASSED",
    "ACCEPTABLE, DEFECT, FALSE_CALL",
    "ACCEPTABLE, UNJUDGED, UNJUDGED",
    "DEFECT, DEFECT, CAUGHT",
    "DEFECT, PROCESS_INDICATOR, MISSED",
    "DEFECT, ACCEPTABLE, MISSED",
    "DEFECT, UNJUDGED, UNJUDGED",
    "LIMIT, DEFECT, NOT_COUNTED",
    "LIMIT, UNJUDGED, NOT_COUNTED"
  })
  void aVerdictIsWorthWhatTheRulesSay(TrueClass truth, Verdict verdict, JointResult result) {
    assertThat(Comparison.result(truth, verdict)).isEqualTo(result);
  }

  @Test
  void aRowIsRightBelowAThirdOfAPitchAndWrongFromThere() {
    double limitPx = 0.35 * Truths.PITCH_PX;

    assertThat(moved(limitPx - 0.01, 0).row()).isEqualTo(RowResult.RIGHT);
    assertThat(moved(limitPx + 0.01, 0).row()).isEqualTo(RowResult.WRONG);
    assertThat(moved(0, -limitPx - 0.01).row()).isEqualTo(RowResult.WRONG);
  }

  @Test
  void aRowInReverseOrderIsWrong() {
    List<GradedJoint> joints = new ArrayList<>();
    for (int i = 0; i < FIVE.leads(); i++) {
      double across = (FIVE.leads() - 1 - 2 * i) * Truths.PITCH_PX;
      joints.add(opinion(FIVE.joints().get(i), Verdict.ACCEPTABLE, across, 0));
    }

    assertThat(Comparison.of(FIVE, Truths.scored(FIVE, joints)).row()).isEqualTo(RowResult.WRONG);
  }

  @Test
  void errorsAreMeasuredInTheRowsDirections() {
    JointOutcome first = moved(3, 5).joints().get(0);

    assertThat(first.lateralPx().getAsDouble()).isCloseTo(3, within(1e-9));
    assertThat(first.axialPx().getAsDouble()).as("outwards").isCloseTo(5, within(1e-9));
  }

  @Test
  void aMissingLeadHasNoToeToBeOff() {
    assertThat(moved(3, 5).joints().get(4).lateralPx()).isEmpty();
  }

  /** A row without any lead, reported with its lands moved along the row. */
  private static PhotoOutcome withoutLeads(double dx) {
    PhotoTruth truth = Truths.row(missing(1), missing(2), missing(3));
    List<GradedJoint> joints = new ArrayList<>();
    for (JointTruth joint : truth.joints()) {
      joints.add(Truths.moved(joint, Verdict.DEFECT, dx));
    }
    return Comparison.of(truth, Truths.scored(truth, joints));
  }

  @Test
  void aRowWithoutAnyLeadIsRightOrWrongByItsLands() {
    assertThat(withoutLeads(2).row()).isEqualTo(RowResult.RIGHT);
    assertThat(withoutLeads(2).medianOfPitch()).isCloseTo(2 / Truths.PITCH_PX, within(1e-9));
    assertThat(withoutLeads(Truths.PITCH_PX).row()).isEqualTo(RowResult.WRONG);
    assertThat(SlipList.of(List.of(withoutLeads(Truths.PITCH_PX)), 5))
        .contains("wrong: in the median 1.00 pitch off\n")
        .doesNotContain("NaN");
  }

  @Test
  void aRowNotFoundIsNotWrong() {
    PhotoOutcome outcome = Comparison.of(FIVE, Truths.notFound(FIVE));

    assertThat(outcome.row()).isEqualTo(RowResult.NOT_FOUND);
    assertThat(outcome.reason()).isEqualTo("no-row leads=5");
    assertThat(outcome.joints()).isEmpty();
  }
}
