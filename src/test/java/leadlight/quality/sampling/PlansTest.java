package leadlight.quality.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leadlight.model.UserError;
import leadlight.quality.OutsideR;
import leadlight.quality.Page;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans beyond the tables' single ones; figures "R" are by outside.R. */
class PlansTest {

  private static final SamplingScheme SCHEME = SamplingScheme.builtIn();

  /** Between Ac 2 and Re 5 a lot is accepted: 3 and 4 count. */
  @Test
  void aReducedPlansCurveCountsTheGapAsAccepted() {
    Plan reduced = SCHEME.plan(1000, "II", 2.5, Severity.REDUCED);

    assertThat(reduced.why()).contains("Z1.4").contains("gap between Ac and Re");
    assertThat(Operating.ofProcess(reduced, 0.05))
        .isCloseTo(OutsideR.figure("reduced accepts at .05"), within(1e-12));
    assertThat(Operating.qualityAt(reduced, 0.10))
        .isCloseTo(OutsideR.figure("reduced quality at .10"), within(1e-9));
  }

  /** ISO 2859-1:1999, Table 2-B, from memory: letter S exists for AQL .025 alone. */
  @Test
  void theTightenedTableEndsAsItDoes() {
    for (String level : new String[] {"II", "III"}) {
      Plan large = SCHEME.plan(600_000, level, 0.025, Severity.TIGHTENED);
      assertThat(large.size()).as(level).isEqualTo(3150);
      assertThat(large.accept()).isEqualTo(1);
      assertThat(large.why()).contains("arrow to S");
    }
    Plan rare = SCHEME.plan(600_000, "III", 0.010, Severity.TIGHTENED);
    assertThat(rare.size()).isEqualTo(2000);
    assertThat(rare.accept()).isZero();
    Plan small = SCHEME.plan(500, "S-1", 10, Severity.TIGHTENED);
    assertThat(small.size()).as("letter B").isEqualTo(8);
    Plan letterA = SCHEME.plan(8, "II", 10, Severity.TIGHTENED);
    assertThat(letterA.size()).isEqualTo(8);
    assertThat(letterA.accept()).isEqualTo(1);
  }

  /** ISO 2859-1, Table 1, special levels, from memory. */
  @ParameterizedTest
  @CsvSource({
    "50,S-1,A",
    "51,S-1,B",
    "501,S-1,C",
    "600000,S-1,D",
    "25,S-2,A",
    "1200,S-2,C",
    "600000,S-2,E",
    "500,S-3,D",
    "3200,S-3,E",
    "600000,S-3,H",
    "150,S-4,D",
    "1200,S-4,F",
    "35000,S-4,H",
    "600000,S-4,K"
  })
  void specialLevelsHaveTheirLetters(int lot, String level, String letter) {
    assertThat(SCHEME.letter(lot, level)).isEqualTo(letter);
  }

  @Test
  void aSpecialLevelIsTypedAsPeopleTypeItAndSaysThatItsLetterIsFromMemory() {
    Plan plan = SCHEME.plan(500, "S-2", 1.0, Severity.NORMAL);

    assertThat(plan.size()).isEqualTo(13);
    assertThat(plan.accept()).isZero();
    assertThat(plan.why()).contains("level S-2", "code letter C (of this level, from memory)");
    for (String typed : new String[] {"s-2", "S2", "s2"}) {
      assertThat(SCHEME.plan(500, typed, 1.0, Severity.NORMAL)).as(typed).isEqualTo(plan);
    }
    assertThat(SCHEME.plan(500, "ii", 1.0, Severity.NORMAL).why())
        .contains("level II,")
        .doesNotContain("from memory");
    assertThatThrownBy(() -> SCHEME.plan(500, "S-5", 1.0, Severity.NORMAL))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("level S-5 is unknown");
  }

  /** Single 80, Ac 2 is 50 and 50 with 0/3 and 3/4 (Z1.4, from memory); 125, Ac 3: 80 and 80. */
  @Test
  void aDoublePlanTakesTheNextSmallerLine() {
    DoublePlan plan = SCHEME.doublePlan(1000, "II", 1.0, Severity.NORMAL);
    assertThat(plan.words()).startsWith("inspect 50, accept with 0, refuse with 3 or more");
    assertThat(plan.acceptBoth()).isEqualTo(3);
    assertThatThrownBy(() -> SCHEME.doublePlan(150, "II", 0.65, Severity.NORMAL))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("acceptance number 0");
  }

  @ParameterizedTest
  @CsvSource({"0,.01", "1,.03", "2,.06", "3,.1"})
  void aDoublePlansCurvesAreRs(int at, double share) {
    DoublePlan plan = new DoublePlan(50, 1, 4, 50, 4, "a test");
    assertThat(plan.accepts(share)).isCloseTo(OutsideR.figure("double accepts", at), within(1e-12));
    assertThat(plan.sampleNumber(share))
        .isCloseTo(OutsideR.figure("double sample number", at), within(1e-9));
  }

  @Test
  void whatRectifyingLetsOutIsRs() {
    Rectifying.Limit limit = Rectifying.limit(new Plan(80, 2, 3, ""), 1000);
    assertThat(limit.quality()).isCloseTo(OutsideR.figure("aoql 80/2 of 1000"), within(1e-9));
  }

  /** Schilling and Neubauer, c = 0: 1 - .02 of 500 is 10 units; R: phyper(0,10,490,n) <= .1. */
  @Test
  void anIsolatedLotIsHeldToItsLimitingQuality() {
    Plan zero = new LimitingQuality(0.02, 0, 0.10).of(500);

    assertThat(zero.accept()).isZero();
    assertThat(Operating.ofLot(zero, 500, 10)).isLessThanOrEqualTo(0.10);
    assertThat(Operating.ofLot(new Plan(zero.size() - 1, 0, 1, ""), 500, 10)).isGreaterThan(0.10);
    assertThat(zero.size()).as("R").isEqualTo(102);
    assertThat(new LimitingQuality(0.02, 2, 0.10).of(500).size()).isGreaterThan(zero.size());
    assertThatThrownBy(() -> new LimitingQuality(0.001, 0, 0.1).of(500))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("0 units");
  }

  /** Wald 1947, 5.2: p0 .01, p1 .06, risks .05 and .10: h 1.22 and 1.57, slope .0278 (by hand). */
  @Test
  void aSequentialPlansLinesAreWaldsAndItsRisksAreKept() {
    SequentialPlan plan = new SequentialPlan(0.01, 0.05, 0.06, 0.10);
    double scale = Math.log(0.06 * 0.99 / 0.01 / 0.94);

    assertThat(plan.slope()).isCloseTo(Math.log(0.99 / 0.94) / scale, within(1e-12));
    assertThat(plan.acceptIntercept()).isCloseTo(Math.log(0.95 / 0.10) / scale, within(1e-12));
    assertThat(plan.refuseIntercept()).isCloseTo(Math.log(0.90 / 0.05) / scale, within(1e-12));
    assertThat(plan.course(0.01).accepts()).isGreaterThan(0.95);
    assertThat(plan.course(0.06).accepts()).isLessThan(0.105);
    assertThat(plan.course(0.01).sampleNumber()).isLessThan(80);
    assertThat(plan.course(0).accepts()).isEqualTo(1);
    assertThat(plan.course(0).sampleNumber())
        .as("accepted where the line reaches 0")
        .isEqualTo(Math.ceil(plan.acceptIntercept() / plan.slope()));
  }

  @Test
  void aSequentialPlanWithoutAnEndInSightIsRefused() {
    assertThatThrownBy(() -> new SequentialPlan(0.01, 0.05, 0.0101, 0.10))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("more than 5000");
    assertThatThrownBy(() -> new SequentialPlan(0.01, 0.05, 0.01 + 1e-12, 0.10))
        .isInstanceOf(UserError.class);
  }

  @Test
  void anEndBeyondTheLotIsSaid() {
    SequentialPlan plan = new SequentialPlan(0.01, 0.05, 0.06, 0.10);
    assertThat(words(SchemePages.page(plan, plan.end()))).doesNotContain("more than the lot has");
    assertThat(words(SchemePages.page(plan, plan.end() - 1))).contains("more than the lot has");
  }

  private static String words(Page page) {
    return page.blocks().toString();
  }
}
