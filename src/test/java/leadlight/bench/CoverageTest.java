package leadlight.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** A few lines of docs/quality-coverage.md again, with fewer studies. */
class CoverageTest {

  /** 150 studies have a standard error of 1.8 %: 93 to 97 % less and more two of it. */
  @Test
  void intervalsByPhotoHoldWhatTheySayAndPlainOnesDoNot() {
    double[] held = Coverage.rate(0.03, 0.1, 20, 150, new Random(1));

    assertThat(held[0]).isBetween(0.895, 1.0);
    assertThat(held[1]).as("each joint alone").isLessThan(0.85);
  }

  @Test
  void threeOperatorsGiveAWideButHonestInterval() {
    double[] held = Coverage.gauge(3, true, 60, new Random(1));

    assertThat(held[1]).as("reproduce").isGreaterThan(0.85);
    assertThat(held[2]).as("gauge").isGreaterThan(0.85);
  }
}
