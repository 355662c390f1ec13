package leadlight.quality.sampling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.quality.Outside;
import leadlight.statistics.Rate;
import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Operating characteristics, risks and intervals against tables and against SciPy. */
class OperatingTest {

  /** ISO 2859-1, Table 5 and 6 (200/5 at Pa .10: 4.59 %) and binomial sums. */
  @ParameterizedTest
  @CsvSource({
    "50,1,0.715,3.33,7.56", "80,2,1.03,3.33,6.52", "125,3,1.10,2.93,5.27",
    "200,5,1.31,2.83,4.59", "315,7,1.27,2.43,3.71", "13,0,0.394,5.19,16.2"
  })
  void qualityAtThreePointsOfTheCurve(int size, int accept, double at95, double at50, double at10) {
    Plan plan = new Plan(size, accept, accept + 1, "test");

    assertThat(100 * Operating.qualityAt(plan, 0.95)).isCloseTo(at95, within(0.005));
    assertThat(100 * Operating.qualityAt(plan, 0.50)).isCloseTo(at50, within(0.005));
    assertThat(100 * Operating.qualityAt(plan, 0.10)).isCloseTo(at10, within(0.05));
    for (double pa : new double[] {0.95, 0.5, 0.1}) {
      assertThat(Operating.qualityAt(plan, pa))
          .isCloseTo(
              Outside.figure("quality %d/%d at %s".formatted(size, accept, pa)), within(1e-12));
    }
    for (double share : new double[] {0.005, 0.01, 0.02, 0.03, 0.05, 0.08, 0.12}) {
      assertThat(Operating.ofProcess(plan, share))
          .isCloseTo(
              Outside.figure("oc %d/%d at %s".formatted(size, accept, share)), within(1e-12));
    }
  }

  @ParameterizedTest
  @CsvSource({"2", "5", "10", "25", "50"})
  void theCurveOfOneLotIsHypergeometric(int nonconforming) {
    assertThat(Operating.ofLot(new Plan(50, 1, 2, "test"), 500, nonconforming))
        .isCloseTo(Outside.figure("oc 50/1 in lot of 500 with " + nonconforming), within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"500,5,25,.05,.10", "200,1,20,.05,.10", "1000,0,10,.05,.05"})
  void theSmallestPlanForTwoRisksIsTheOneOfAFullSearch(
      int lot, int good, int bad, String alpha, String beta) {
    RiskPlan risks =
        new RiskPlan(
            (double) good / lot,
            Double.parseDouble(alpha),
            (double) bad / lot,
            Double.parseDouble(beta));
    Plan plan = risks.of(lot);

    String name = "risk plan %d, %d, %d, %s, %s".formatted(lot, good, bad, alpha, beta);
    assertThat(plan.size()).isEqualTo((int) Outside.figure(name, 0));
    assertThat(plan.accept()).isEqualTo((int) Outside.figure(name, 1));
  }

  /** Newcombe 1998, Statistics in Medicine 17:857, Table I, 95 %. */
  @ParameterizedTest
  @CsvSource({
    "81,263,.2553,.3662",
    "15,148,.0624,.1605",
    "0,20,0,.1611",
    "1,29,.0061,.1718",
    "0,19,0,.168"
  })
  void wilsonIntervals(int count, int of, double lower, double upper) {
    Rate rate = new Rate(count, of);

    assertThat(rate.lower()).isCloseTo(lower, within(6e-5));
    assertThat(rate.upper()).isCloseTo(upper, within(of == 19 ? 5e-4 : 6e-5));
    assertThat(rate.lower())
        .isCloseTo(Outside.figure("wilson " + count + "/" + of, 0), within(1e-12));
    assertThat(rate.upper())
        .isCloseTo(Outside.figure("wilson " + count + "/" + of, 1), within(1e-12));
  }

  /** NIST/SEMATECH e-Handbook 7.2.4.1: 90 %, 4 of 20; Newcombe 1998: 95 %, 81 of 263. */
  @Test
  void exactIntervals() {
    var nist = BinomialConfidenceInterval.CLOPPER_PEARSON.fromErrorRate(20, 4, 0.10);
    var newcombe = BinomialConfidenceInterval.CLOPPER_PEARSON.fromErrorRate(263, 81, 0.05);

    assertThat(nist.getLowerBound()).isCloseTo(.0714, within(5e-5));
    assertThat(nist.getUpperBound()).isCloseTo(.4010, within(5e-5));
    assertThat(newcombe.getLowerBound()).isCloseTo(.2527, within(5e-5));
    assertThat(newcombe.getUpperBound()).isCloseTo(.3676, within(5e-5));
    assertThat(nist.getLowerBound()).isCloseTo(Outside.figure("exact 90 % 4/20", 0), within(1e-9));
  }
}
