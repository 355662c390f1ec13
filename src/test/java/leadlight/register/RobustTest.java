package leadlight.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RobustTest {

  @Test
  void theSpreadOfNormalErrorsIsFoundFromTheirMedianSize() {
    Random random = new Random(1);
    double[] sizes = random.doubles(20_001).map(x -> Math.abs(random.nextGaussian())).toArray();
    Arrays.sort(sizes);
    assertThat(Robust.spread(sizes[sizes.length / 2])).isCloseTo(1, within(0.03));
  }

  @Test
  void anErrorCountsTheLessTheLargerItIsAndNothingBeyondFiveSpreads() {
    assertThat(Robust.weight(0, 2)).isEqualTo(1);
    assertThat(Robust.weight(-4, 2)).isBetween(0.5, 0.9).isEqualTo(Robust.weight(4, 2));
    assertThat(Robust.weight(10, 2)).isZero();
  }
}
