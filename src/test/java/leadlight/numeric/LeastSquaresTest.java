package leadlight.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class LeastSquaresTest {

  @Test
  void aThirdOfWildValuesDoesNotBendTheLine() {
    int n = 30;
    double[][] rows = new double[n][];
    double[] y = new double[n];
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      rows[i] = new double[] {1, i};
      y[i] = 0.5 + 0.01 * i + (i % 3 == 0 ? 0.3 : 0);
      w[i] = 1;
    }
    double[] c = LeastSquares.robust(rows, y, w, 0.35, 0.03);
    assertThat(c[0]).isCloseTo(0.5, within(1e-3));
    assertThat(c[1]).isCloseTo(0.01, within(1e-4));
  }

  @Test
  void anObservationWithoutWeightHasNoSay() {
    double[][] rows = {{1}, {1}, {1}};
    double[] c = LeastSquares.robust(rows, new double[] {2, 2, 9}, new double[] {1, 1, 0}, 20, 20);
    assertThat(c[0]).isCloseTo(2, within(1e-4));
  }
}
