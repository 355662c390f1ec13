package leadlight.leg.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ObroundTest {

  private static final Obround TALL = new Obround(1.0, 2.0);

  @Test
  void aLongLandReachesFarthestAlongItself() {
    assertThat(TALL.reachMm(1, 0)).isEqualTo(0.5);
    assertThat(TALL.reachMm(0, 1)).isCloseTo(1.0, within(1e-12));
    assertThat(new Obround(2.0, 1.0).reachMm(1, 0)).isCloseTo(1.0, within(1e-12));
  }

  @Test
  void itsRoundEndIsAHalfCircleAboutTheEndOfItsStraightSide() {
    double dx = Math.sin(0.3);
    double dy = Math.cos(0.3);
    double reach = TALL.reachMm(dx, dy);
    assertThat(Math.hypot(reach * dx, reach * dy - 0.5)).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void aRoundLandReachesAlikeEverywhere() {
    assertThat(new Obround(1.8, 1.8).reachMm(0.6, 0.8)).isCloseTo(0.9, within(1e-12));
  }

  @Test
  void normalsStandOnTheOutline() {
    assertThat(TALL.normal(1, 0.1)).containsExactly(new double[] {1, 0}, within(1e-9));
    double[] end = TALL.normal(Math.sin(0.3), Math.cos(0.3));
    assertThat(Math.hypot(end[0], end[1])).isCloseTo(1, within(1e-9));
    assertThat(end[1]).isPositive();
  }
}
