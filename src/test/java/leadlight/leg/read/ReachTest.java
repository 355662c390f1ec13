package leadlight.leg.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReachTest {

  private static final List<Double> STEPS = List.of(0.0, 90.0, 180.0, 270.0);

  private static Reach reach(Double... chances) {
    return new Reach(STEPS, List.of(chances), 360);
  }

  @Test
  void whatIsSurelyAllIsAllWithoutDoubt() {
    Reach all = reach(1.0, 1.0, 1.0, 1.0);
    assertThat(all.mean()).isEqualTo(360);
    assertThat(all.u()).isZero();
    assertThat(all.atLeast(330)).isEqualTo(1);
    assertThat(all.none()).isZero();
  }

  /** The even distribution from 0 to 360: mean 180, standard deviation 360 over root 12. */
  @Test
  void evenChancesGiveMeanAndDeviationOfTheEvenDistribution() {
    int steps = 360;
    List<Double> at = new java.util.ArrayList<>();
    List<Double> chances = new java.util.ArrayList<>();
    for (int i = 0; i < steps; i++) {
      at.add((double) i);
      chances.add(1 - (i + 0.5) / steps);
    }
    Reach even = new Reach(at, chances, steps);
    assertThat(even.mean()).isCloseTo(180, within(0.01));
    assertThat(even.u()).isCloseTo(360 / Math.sqrt(12), within(0.01));
  }

  @Test
  void betweenTwoStepsTheChanceRunsStraight() {
    assertThat(reach(1.0, 0.8, 0.4, 0.2).atLeast(225)).isCloseTo(0.3, within(1e-12));
    assertThat(reach(1.0, 0.8, 0.4, 0.2).atLeast(270)).isEqualTo(0.2);
    assertThat(reach(0.9, 0.8, 0.4, 0.2).none()).isCloseTo(0.1, within(1e-12));
  }

  @Test
  void moreIsNeverLikelierThanLess() {
    LegReaderFile.Scale scale = new LegReaderFile.Scale(1, 0, "test");
    Reach reach = Reach.of(STEPS, new float[] {2, -1, 3, 0}, scale, 360);
    assertThat(reach.chances()).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    assertThat(reach.chances().get(2)).isEqualTo(reach.chances().get(1));
  }

  @Test
  void aChanceIsNeededForEachStep() {
    assertThatThrownBy(() -> new Reach(STEPS, List.of(1.0), 360))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
