package leadlight.quality.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import leadlight.quality.OutsideR;
import org.junit.jupiter.api.Test;

/** JCGM 106:2012, clause 9, beside R's integrate (outside.R). */
class ConformityTest {

  private static final double NONE = Double.NEGATIVE_INFINITY;

  private static void assertLikeR(Conformity risk, String name) {
    assertThat(risk.falseAccept()).isCloseTo(OutsideR.figure(name, 0), within(1e-9));
    assertThat(risk.falseReject()).isCloseTo(OutsideR.figure(name, 1), within(1e-9));
  }

  @Test
  void oneLimitWithAndWithoutGuardBand() {
    assertLikeR(new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 0), "risk overhang");
    assertLikeR(
        new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 1.645 * 0.0086), "risk overhang guarded");
  }

  @Test
  void twoLimits() {
    assertLikeR(new Conformity(0.01, 0.1, 0.05, -0.2, 0.2, 0.05), "risk two-sided");
  }

  @Test
  void whatIsNeitherAcceptedNorCalledIsLeftOpen() {
    Conformity one = new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 1.645 * 0.0086);
    Conformity two = new Conformity(0.01, 0.1, 0.05, -0.2, 0.2, 0.05);
    Conformity unguarded = new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 0);

    assertThat(one.falseCall())
        .isCloseTo(OutsideR.figure("split overhang guarded", 0), within(1e-9));
    assertThat(one.leftOpen())
        .isCloseTo(OutsideR.figure("split overhang guarded", 1), within(1e-9));
    assertThat(two.falseCall()).isCloseTo(OutsideR.figure("split two-sided", 0), within(1e-9));
    assertThat(two.leftOpen()).isCloseTo(OutsideR.figure("split two-sided", 1), within(1e-9));
    assertThat(unguarded.leftOpen()).isCloseTo(0, within(1e-12));
    assertThat(unguarded.falseCall()).isCloseTo(unguarded.falseReject(), within(1e-12));
  }

  @Test
  void aGuardBandTradesTheConsumersRiskForTheProducers() {
    Conformity without = new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 0);
    Conformity with = new Conformity(0.03, 0.02, 0.0086, NONE, 0.065, 0.01);

    assertThat(with.falseAccept()).isLessThan(without.falseAccept());
    assertThat(with.falseReject()).isGreaterThan(without.falseReject());
    // 1 - pnorm(1.75): R.
    assertThat(without.beyond()).isCloseTo(0.0400591568638171, within(1e-10));
    assertThat(with.falseAcceptInLot(1000))
        .isCloseTo(1 - Math.pow(1 - with.falseAccept(), 1000), within(1e-9));
  }

  @Test
  void aProcessThatDoesNotVaryIsDecidedByTheReadingAlone() {
    Conformity good = new Conformity(1, 0, 0.1, NONE, 1, 0);
    assertThat(good.falseReject()).isCloseTo(0.5, within(1e-12));
    assertThat(good.falseAccept()).isZero();
    assertThat(new Conformity(0, 1, 0.1, -1, 1, 2).falseReject())
        .as("guard bands that meet accept nothing")
        .isCloseTo(0.6826894921, within(1e-9));
    assertThatThrownBy(() -> new Conformity(0, 1, 0, -1, 1, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
