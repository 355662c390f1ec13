package leadlight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.leg.find.FoundLeg;
import leadlight.leg.find.LandPlace;
import leadlight.leg.find.LegRequest;
import leadlight.leg.read.LegReader;
import leadlight.leg.read.Reach;
import leadlight.model.BoardSide;
import leadlight.model.FindingKind;
import leadlight.model.PointPx;
import leadlight.model.Verdict;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.DoubtOfLeg;
import leadlight.model.result.GradedLeg;
import org.junit.jupiter.api.Test;

class LegGraderTest {

  private static final Reach ALL = reach(360, 1, 1, 1);
  private static final Reach NONE = reach(360, 0.02, 0.01, 0);
  private static final Reach COVERED = reach(1, 1, 1, 1);
  private static final Reach BARE = reach(1, 0.1, 0.02, 0.01);

  /** Chances of more than none, a quarter and nine tenths. */
  private static Reach reach(double whole, Double... chances) {
    return new Reach(List.of(0.0, 0.25 * whole, 0.9 * whole), List.of(chances), whole);
  }

  private static Reach reach(double whole, double some, double quarter, double most) {
    return reach(whole, new Double[] {some, quarter, most});
  }

  private static LegReader.Reading read(Reach wetted, Reach covered, double burntOut) {
    return new LegReader.Reading(wetted, covered, BARE, 0, burntOut);
  }

  private static GradedLeg graded(
      BoardSide side, Optional<Doubt> otherSide, LegReader.Reading read) {
    LegRequest.Leg leg = new LegRequest.Leg(1, 0, 0, 1, 2, 0.6, 1.6);
    LandPlace place = new LandPlace(new PointPx(500, 500), 0, 60, 60);
    return new LegGrader(
            AcceptanceSet.load(AcceptanceSet.DEFAULT_ID),
            2,
            side,
            otherSide,
            LegJudging.builtIn(),
            1000,
            1000)
        .grade(new FoundLeg(leg, 1, place, 1), read);
  }

  private static GradedLeg solder(LegReader.Reading read) {
    return graded(BoardSide.SOLDER, Optional.empty(), read);
  }

  @Test
  void aLegThatIsSurelyWettedAndCoveredIsAcceptable() {
    assertThat(solder(read(ALL, COVERED, 0)).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  @Test
  void aLegThatSolderHardlyMeetsIsOpen() {
    GradedLeg leg = solder(read(NONE, BARE, 0));
    assertThat(leg.verdict()).isEqualTo(Verdict.DEFECT);
    assertThat(leg.findings()).containsExactly(FindingKind.OPEN);
    assertThat(leg.clauses()).isNotEmpty();
  }

  @Test
  void aBareLandIsTooLittleThoughTheLegIsWetted() {
    GradedLeg leg = solder(read(ALL, BARE, 0));
    assertThat(leg.findings()).containsExactly(FindingKind.INSUFFICIENT);
  }

  @Test
  void whatIsNeitherProvenIsNotJudged() {
    assertThat(solder(read(reach(360, 1, 1, 0.5), COVERED, 0)).doubts())
        .singleElement()
        .isInstanceOf(DoubtOfLeg.WettingUndecided.class);
  }

  @Test
  void aBurntOutLandShowsTooLittleEitherWay() {
    for (LegReader.Reading read : List.of(read(ALL, COVERED, 0.6), read(NONE, BARE, 0.6))) {
      assertThat(solder(read).doubts()).containsExactly(new DoubtOfLeg.LegBurntOut(0.6));
    }
    assertThat(solder(read(ALL, COVERED, 0.4)).verdict()).isEqualTo(Verdict.ACCEPTABLE);
  }

  @Test
  void theComponentSideCallsFaultsAndVouchesForNothing() {
    Optional<Doubt> none = Optional.empty();
    assertThat(graded(BoardSide.COMPONENT, none, read(ALL, COVERED, 0)).doubts())
        .containsExactly(new DoubtOfLeg.ComponentSide());
    assertThat(graded(BoardSide.COMPONENT, none, read(NONE, BARE, 0)).verdict())
        .isEqualTo(Verdict.DEFECT);
  }

  @Test
  void aPhotoThatLooksLikeTheOtherSideIsNotJudged() {
    Doubt shell = new DoubtOfLeg.ShellInView(0.9);
    for (LegReader.Reading read : List.of(read(ALL, COVERED, 0), read(NONE, BARE, 0))) {
      assertThat(graded(BoardSide.SOLDER, Optional.of(shell), read).doubts())
          .containsExactly(shell);
    }
  }
}
