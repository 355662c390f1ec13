package leadlight.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ArithmeticTest {

  /** Values and quartiles of R 4's {@code quantile(c(2, 1, 10, 4), c(.25, .5, .75))}, type 7. */
  @Test
  void quantilesAreThoseOfHyndmanAndFansSeventhType() {
    double[] values = {2, 1, 10, 4};
    assertThat(Quantiles.of(values, 0.25)).isEqualTo(1.75);
    assertThat(Quantiles.of(values, 0.5)).isEqualTo(3);
    assertThat(Quantiles.of(values, 0.75)).isEqualTo(5.5);
    assertThat(values).containsExactly(2, 1, 10, 4);
    assertThat(Quantiles.of(new double[0], 0.5)).isNaN();
  }

  @Test
  void bothMediansAreTheMiddleOfOddCountsAndBetweenTheMiddleTwoOfEvenOnes() {
    assertThat(Quantiles.median(new double[] {9, 1, 4})).isEqualTo(4);
    assertThat(Quantiles.middle(new double[] {9, 1, 4})).isEqualTo(4);
    assertThat(Quantiles.median(new double[] {9, 1, 4, 5})).isEqualTo(4.5);
    assertThat(Quantiles.middle(new double[] {9, 1, 4, 5})).isEqualTo(4.5);
    assertThat(Quantiles.median(new double[0])).isZero();
  }

  @Test
  void theTopOfASampledParabolaIsFoundExactly() {
    double top = 2.3;
    double[] values = new double[5];
    for (int i = 0; i < values.length; i++) {
      values[i] = 7 - (i - top) * (i - top);
    }
    assertThat(Parabola.peak(values, 2)).isCloseTo(top, within(1e-12));
    assertThat(Parabola.vertex(values[1], values[2], values[3])).isCloseTo(0.3, within(1e-12));
  }

  @Test
  void aGreatestValueAtAnEndOrInAHollowStaysWhereItIs() {
    assertThat(Parabola.peak(new double[] {3, 2, 1}, 0)).isZero();
    assertThat(Parabola.peak(new double[] {1, 2, 3}, 2)).isEqualTo(2);
    assertThat(Parabola.peak(new double[] {3, 1, 2}, 1)).isEqualTo(1);
    assertThat(Parabola.vertex(1, 2, 3)).isZero();
  }

  @Test
  void logarithmsOfOddsBecomeChances() {
    assertThat(Logistic.of(0)).isEqualTo(0.5);
    assertThat(Logistic.of(Math.log(3))).isCloseTo(0.75, within(1e-12));
    assertThat(Logistic.of(-Math.log(3))).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void betweenGridPointsAPlaneIsAPlane() {
    assertThat(Bilinear.of(1.0, 3.0, 5.0, 7.0, 0.25, 0.5)).isEqualTo(3.5);
    assertThat(Bilinear.of(1f, 3f, 5f, 7f, 1f, 1f)).isEqualTo(7f);
  }
}
