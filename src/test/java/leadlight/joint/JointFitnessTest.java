package leadlight.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.Doubt;
import org.junit.jupiter.api.Test;

class JointFitnessTest {

  private static final FitnessLimits LIMITS = FitnessLimits.builtIn();

  private static Optional<Doubt> unfit(double pitchPx, double blurPx, double burntShare) {
    return new JointFitness(pitchPx, OptionalDouble.of(blurPx), burntShare, 0).unfitBecause(LIMITS);
  }

  @Test
  void filletsAreJudgedFromTheStatedPitchOn() {
    double least = LIMITS.fineFromPitchPx().value();
    assertThat(unfit(least + 0.1, 0, 0)).isEmpty();
    assertThat(unfit(least - 0.1, 0, 0))
        .contains(new Doubt.TooFewPixels(least - 0.1, LIMITS.fineFromPitchPx().value()));
  }

  @Test
  void blurIsCountedInPitches() {
    double most = LIMITS.fineToBlurPitch().value();
    assertThat(unfit(50, 50 * most * 0.99, 0)).isEmpty();
    assertThat(unfit(50, 50 * most * 1.01, 0)).containsInstanceOf(Doubt.Blurred.class);
  }

  @Test
  void aJointThatGlareBurnsOutIsNotJudged() {
    double most = LIMITS.burntMost().value();
    assertThat(unfit(50, 1, most - 0.01)).isEmpty();
    assertThat(unfit(50, 1, most + 0.01)).contains(new Doubt.Glare(most + 0.01));
  }

  @Test
  void aFocusThatNoEdgeShowsIsNoFocus() {
    JointFitness flat = new JointFitness(50, OptionalDouble.empty(), 0, 0);
    assertThat(flat.unfitBecause(LIMITS)).contains(new Doubt.FocusUnknown());
  }
}
