package leadlight.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.statistics.interval.BinomialConfidenceInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateTest {

  /** Newcombe 1998, Statistics in Medicine 17, table I, method 3 (Wilson score), 95 %. */
  @ParameterizedTest
  @CsvSource({
    "81, 263, .2553, .3662",
    "15, 148, .0624, .1605",
    "0, 20, 0, .1611",
    "1, 29, .0061, .1718"
  })
  void intervalIsWilsonsAsNewcombePrintsIt(int count, int of, double lower, double upper) {
    Rate rate = new Rate(count, of);

    assertThat(rate.lower()).isCloseTo(lower, within(0.00005));
    assertThat(rate.upper()).isCloseTo(upper, within(0.00005));
  }

  @Test
  void noFaultInAWholeRowProvesLittle() {
    // Wilson's upper end for 0 of n is z^2 / (n + z^2), z = 1.959964 (calculated).
    double z2 = 1.959964 * 1.959964;

    assertThat(new Rate(0, 19).upper()).isCloseTo(z2 / (19 + z2), within(1e-6));
    assertThat(new Rate(0, 19).upper()).isCloseTo(0.168, within(0.0005));
  }

  /** The library's own, another program. */
  @ParameterizedTest
  @CsvSource({"81, 263", "0, 20", "20, 20", "1, 1"})
  void intervalIsTheLibrarys(int count, int of) {
    var interval = BinomialConfidenceInterval.WILSON_SCORE.fromErrorRate(of, count, 0.05);

    assertThat(new Rate(count, of).lower()).isCloseTo(interval.getLowerBound(), within(1e-12));
    assertThat(new Rate(count, of).upper()).isCloseTo(interval.getUpperBound(), within(1e-12));
  }

  @Test
  void nothingToRateLeavesEverythingPossible() {
    Rate none = new Rate(0, 0);

    assertThat(none.share()).isNaN();
    assertThat(none.lower()).isZero();
    assertThat(none.upper()).isOne();
  }

  @Test
  void moreThanAllIsRefused() {
    assertThatThrownBy(() -> new Rate(3, 2)).hasMessage("3 of 2 is no rate");
  }
}
