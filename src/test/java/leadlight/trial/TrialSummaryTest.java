package leadlight.trial;

import static leadlight.trial.Truths.joint;
import static leadlight.trial.Truths.opinion;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.statistics.Rate;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.JointResult;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.Slip;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrueClass;
import org.junit.jupiter.api.Test;

class TrialSummaryTest {

  private final JointTruth good = joint(1, TrueClass.ACCEPTABLE);
  private final JointTruth open = joint(2, TrueClass.DEFECT, "open");
  private final JointTruth bridge = joint(3, TrueClass.DEFECT, "bridge");
  private final JointTruth limit = joint(4, TrueClass.LIMIT, "excess");
  private final PhotoTruth truth = Truths.row(good, open, bridge, limit);
  private final PhotoOutcome outcome =
      Comparison.of(
          truth,
          Truths.scored(
              truth,
              List.of(
                  opinion(good, Verdict.DEFECT, 1, 4, FindingKind.OPEN),
                  opinion(open, Verdict.ACCEPTABLE, 1, 4),
                  opinion(bridge, Verdict.DEFECT, 1, 4, FindingKind.EXCESS),
                  opinion(limit, Verdict.DEFECT, 3, 4))));
  private final TrialSummary summary =
      TrialSummary.of(List.of(outcome, Comparison.of(truth, Truths.notFound(truth))));

  @Test
  void jointsAtTheLimitAreNotCounted() {
    assertThat(summary.all().joints()).isEqualTo(3);
  }

  @Test
  void missesAreOfDefectsAndFalseCallsOfGoodJoints() {
    assertThat(summary.all().missed().plain()).isEqualTo(new Rate(1, 2));
    assertThat(summary.all().falseCalls().plain()).isEqualTo(new Rate(1, 1));
    assertThat(summary.all().unjudged().plain()).isEqualTo(new Rate(0, 3));
  }

  @Test
  void aDefectCaughtUnderAWrongNameIsCaughtButNotNamed() {
    assertThat(summary.all().named().plain()).isEqualTo(new Rate(0, 1));
  }

  @Test
  void jointsOfRowsNotFoundAreCountedApart() {
    assertThat(summary.jointsInRowsNotFound()).isEqualTo(3);
    assertThat(summary.rows().right()).isEqualTo(new Rate(1, 2));
    assertThat(summary.rows().notFound()).isEqualTo(new Rate(1, 2));
    assertThat(summary.rows().wrong()).isEqualTo(new Rate(0, 2));
  }

  @Test
  void findingsAreRatedOneByOne() {
    assertThat(summary.byFinding())
        .extracting(
            FindingTally::kind,
            tally -> tally.missed().plain(),
            tally -> tally.unjudged().plain(),
            tally -> tally.named().plain(),
            tally -> tally.calledInError().plain())
        .containsExactly(
            tuple(
                FindingKind.BRIDGE, new Rate(0, 1), new Rate(0, 1), new Rate(0, 1), new Rate(0, 1)),
            tuple(
                FindingKind.OPEN, new Rate(1, 1), new Rate(0, 1), new Rate(0, 0), new Rate(1, 1)));
  }

  @Test
  void positionsAreOverThePitchAndHeldAgainstTwiceTheStatedUncertainty() {
    Positions at = summary.positions();

    assertThat(at.leads()).isEqualTo(4);
    assertThat(at.lateralMedian()).isCloseTo(1 / Truths.PITCH_PX, within(1e-9));
    assertThat(at.axialMedian()).isCloseTo(4 / Truths.PITCH_PX, within(1e-9));
    assertThat(at.lateralCovered().plain()).as("3 px off, u = 1 px").isEqualTo(new Rate(3, 4));
    assertThat(at.axialCovered().plain()).as("4 px off, u = 1 px").isEqualTo(new Rate(0, 4));
  }

  @Test
  void slipsAreNamedInWords() {
    assertThat(Slip.of(outcome))
        .extracting(Slip::pin, Slip::result, Slip::truth, Slip::opinion)
        .containsExactly(
            tuple(1, JointResult.FALSE_CALL, "wetted", "defect open"),
            tuple(2, JointResult.MISSED, "open", "acceptable"));
  }
}
