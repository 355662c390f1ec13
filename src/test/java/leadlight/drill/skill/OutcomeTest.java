package leadlight.drill.skill;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.drill.sitting.PracticeSets;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;
import leadlight.statistics.Rate;
import org.junit.jupiter.api.Test;

class OutcomeTest {

  private static final Optional<FindingKind> NONE = Optional.empty();

  static DrillAnswer answer(
      Verdict said, Optional<FindingKind> finding, String truth, FindingKind... truly) {
    return new DrillAnswer(
        1,
        1,
        "a.jpg pin 1",
        said,
        finding,
        Optional.of(truth).filter(t -> !t.isEmpty()),
        List.of(truly),
        Optional.of(Verdict.ACCEPTABLE),
        List.of(),
        900,
        PracticeSets.NOON);
  }

  private static Outcome of(
      Verdict said, Optional<FindingKind> finding, String truth, FindingKind... truly) {
    return Outcome.of(answer(said, finding, truth, truly));
  }

  @Test
  void anAnswerIsWorthWhatItIsAgainstTheTruth() {
    Optional<FindingKind> open = Optional.of(FindingKind.OPEN);
    assertThat(of(Verdict.ACCEPTABLE, NONE, "acceptable")).isEqualTo(Outcome.PASSED);
    assertThat(of(Verdict.DEFECT, open, "acceptable")).isEqualTo(Outcome.FALSE_ALARM);
    assertThat(of(Verdict.DEFECT, open, "defect", FindingKind.OPEN)).isEqualTo(Outcome.RIGHT);
    assertThat(of(Verdict.DEFECT, open, "defect", FindingKind.BRIDGE)).isEqualTo(Outcome.MISNAMED);
    assertThat(of(Verdict.ACCEPTABLE, NONE, "defect", FindingKind.OPEN)).isEqualTo(Outcome.MISSED);
    assertThat(of(Verdict.UNJUDGED, NONE, "defect", FindingKind.OPEN))
        .isEqualTo(Outcome.NOT_JUDGED);
    assertThat(of(Verdict.DEFECT, open, "limit")).isEqualTo(Outcome.NOT_COUNTED);
    assertThat(of(Verdict.DEFECT, open, "")).isEqualTo(Outcome.NO_TRUTH);
  }

  @Test
  void somethingElseNamesOnlyAFaultWithoutAKeyOfItsOwn() {
    assertThat(of(Verdict.DEFECT, NONE, "defect", FindingKind.RESIDUE)).isEqualTo(Outcome.RIGHT);
    assertThat(of(Verdict.DEFECT, NONE, "defect", FindingKind.OPEN)).isEqualTo(Outcome.MISNAMED);
  }

  @Test
  void aRightAnswerMovesAFindingOneBoxOnAndAnyOtherToTheFirst() {
    DrillAnswer right =
        answer(Verdict.DEFECT, Optional.of(FindingKind.OPEN), "defect", FindingKind.OPEN);
    DrillAnswer missed = answer(Verdict.ACCEPTABLE, NONE, "defect", FindingKind.OPEN);

    DueAgain due = DueAgain.after(List.of(right, right));
    assertThat(due.step(FindingKind.OPEN)).isEqualTo(3);
    assertThat(due.step(FindingKind.BRIDGE)).isEqualTo(1);
    assertThat(due.weight(FindingKind.OPEN)).isEqualTo(0.25);
    assertThat(DueAgain.after(List.of(right, right, missed)).step(FindingKind.OPEN)).isEqualTo(1);
    assertThat(
            DueAgain.after(List.of(right, right, right, right, right, right))
                .step(FindingKind.OPEN))
        .as("the last step")
        .isEqualTo(5);
  }

  @Test
  void figuresLeaveOutLimitsAndCountOpenAnswersApart() {
    Optional<FindingKind> open = Optional.of(FindingKind.OPEN);
    Figures figures =
        Figures.of(
                List.of(
                    answer(Verdict.ACCEPTABLE, NONE, "defect", FindingKind.OPEN),
                    answer(Verdict.DEFECT, open, "defect", FindingKind.OPEN),
                    answer(Verdict.UNJUDGED, NONE, "defect", FindingKind.OPEN),
                    answer(Verdict.DEFECT, open, "acceptable"),
                    answer(Verdict.ACCEPTABLE, NONE, "acceptable"),
                    answer(Verdict.DEFECT, open, "limit"),
                    answer(Verdict.DEFECT, open, "")))
            .orElseThrow();

    assertThat(figures.judged()).isEqualTo(5);
    assertThat(figures.missed().plain()).isEqualTo(new Rate(1, 2));
    assertThat(figures.falseAlarm().plain()).isEqualTo(new Rate(1, 2));
    assertThat(figures.notJudged().plain()).isEqualTo(new Rate(1, 5));
    assertThat(Figures.of(List.of(answer(Verdict.DEFECT, open, "limit")))).isEmpty();
  }
}
