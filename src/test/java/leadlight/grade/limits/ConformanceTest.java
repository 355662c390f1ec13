package leadlight.grade.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Examples of JCGM 106:2012 (bipm.org), quoted to three digits there. */
class ConformanceTest {

  @Test
  void zenerBreakdownVoltageAgainstAnUpperLimit() {
    assertThat(Conformance.probability(-5.47, 0.05, -5.40, Bound.UPPER))
        .isCloseTo(0.919, within(5e-4));
  }

  @Test
  void burstPressureAgainstALowerLimit() {
    assertThat(Conformance.probability(509.7, 8.6, 490, Bound.LOWER))
        .isCloseTo(0.989, within(5e-4));
  }

  @Test
  void oilViscosityBetweenTwoLimits() {
    double aboveTheLower = Conformance.probability(13.6, 1.8, 12.5, Bound.LOWER);
    double belowTheUpper = Conformance.probability(13.6, 1.8, 16.3, Bound.UPPER);

    assertThat(aboveTheLower + belowTheUpper - 1).isCloseTo(0.663, within(5e-4));
  }

  /** Reading from which 100 km/h is passed with probability 0.999, u 2 % of the reading. */
  @Test
  void speedIsProvenTooHighFromTheGuardBandOn() {
    assertThat(speeding(106.7)).isEqualTo(Conformance.Zone.PASSED);
    assertThat(speeding(106.5)).isEqualTo(Conformance.Zone.NEITHER);
  }

  @Test
  void betweenTheGuardBandsNothingIsProven() {
    assertThat(zone(-1.65)).isEqualTo(Conformance.Zone.KEPT);
    assertThat(zone(-1.64)).isEqualTo(Conformance.Zone.NEITHER);
    assertThat(zone(1.64)).isEqualTo(Conformance.Zone.NEITHER);
    assertThat(zone(1.65)).isEqualTo(Conformance.Zone.PASSED);
  }

  @Test
  void withoutUncertaintyTheLimitItselfConforms() {
    assertThat(Conformance.probability(0.1, 0, 0.1, Bound.UPPER)).isEqualTo(1);
    assertThat(Conformance.probability(0.1, 0, 0.1, Bound.LOWER)).isEqualTo(1);
    assertThat(Conformance.probability(0.11, 0, 0.1, Bound.UPPER)).isEqualTo(0);
  }

  @Test
  void whatIsNoMeasurementIsRefused() {
    assertThatThrownBy(() -> Conformance.probability(Double.NaN, 1, 0, Bound.UPPER))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Conformance.probability(0, -1, 0, Bound.UPPER))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Conformance.probability(0, Double.NaN, 0, Bound.UPPER))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Conformance.Zone speeding(double readingKmh) {
    return Conformance.zone(
        Conformance.probability(readingKmh, 0.02 * readingKmh, 100, Bound.UPPER), 0.999);
  }

  private static Conformance.Zone zone(double guardBands) {
    return Conformance.zone(Conformance.probability(guardBands, 1, 0, Bound.UPPER), 0.95);
  }
}
