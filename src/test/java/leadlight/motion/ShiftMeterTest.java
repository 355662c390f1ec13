package leadlight.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import leadlight.register.Matched;
import leadlight.register.RegisterTuning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShiftMeterTest {

  private static final NudgeTuning TUNING = NudgeTuning.builtIn();

  private static ShiftMeter.Shift measured(double toePx, double noise, double lamp, int towards) {
    boolean[] nothing = new boolean[DrawnFoot.WIDTH * DrawnFoot.HEIGHT];
    return new ShiftMeter(
            Matched.of(DrawnFoot.pushed(toePx, noise, lamp), RegisterTuning.builtIn()),
            TUNING,
            DrawnFoot.PITCH_PX,
            nothing)
        .of(DrawnFoot.FOOT, towards);
  }

  @ParameterizedTest
  @CsvSource({"-6, -1", "-2.5, -1", "2.5, 1", "6, 1", "6, 0"})
  void aPushedFootIsFoundWhereItWasDrawn(double toePx, int towards) {
    ShiftMeter.Shift shift = measured(toePx, 2, 1, towards);
    assertThat(shift.toePx()).isCloseTo(toePx, within(TUNING.relative().value() * 2 * 6));
    assertThat(shift.ratio()).isLessThan(TUNING.clearlyMoved().value());
  }

  @ParameterizedTest
  @CsvSource({"0", "0.2", "-0.4"})
  void aFootThatHardlyMovedIsMeasuredToTheBoundOfItsCut(double toePx) {
    ShiftMeter.Shift shift = measured(toePx, 2, 1, 0);
    assertThat(shift.boundPx()).isLessThan(0.05);
    assertThat(shift.toePx()).isCloseTo(toePx, within(4 * shift.boundPx() + 0.1 * Math.abs(toePx)));
  }

  @Test
  void moreNoiseIsSaidByALargerBound() {
    assertThat(measured(0, 8, 1, 0).boundPx()).isGreaterThan(2 * measured(0, 2, 1, 0).boundPx());
  }

  @Test
  void exposureIsNoMovement() {
    assertThat(measured(0, 2, 1.3, 0).toePx()).isCloseTo(0, within(0.15));
  }

  @Test
  void aFootUnderThePickIsNotAStillOne() {
    boolean[] all = new boolean[DrawnFoot.WIDTH * DrawnFoot.HEIGHT];
    assertThat(meter(all).still(DrawnFoot.FOOT)).isPresent();
    Arrays.fill(all, true);
    assertThat(meter(all).still(DrawnFoot.FOOT)).isEmpty();
  }

  private static ShiftMeter meter(boolean[] covered) {
    return new ShiftMeter(
        Matched.of(DrawnFoot.pushed(0, 2, 1), RegisterTuning.builtIn()),
        TUNING,
        DrawnFoot.PITCH_PX,
        covered);
  }
}
