package leadlight.joint;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class JointFitnessTest {

  private static final FitnessLimits LIMITS = FitnessLimits.builtIn();

  @Test
  void filletsAreJudgedFromTheStatedPitchOn() {
    double least = LIMITS.fineFromPitchPx().value();
    assertThat(new JointFitness(least + 0.1, 0, 0).unfitBecause(LIMITS)).isEmpty();
    assertThat(new JointFitness(least - 0.1, 0, 0).unfitBecause(LIMITS).orElseThrow())
        .contains("photograph closer");
  }

  @Test
  void blurIsCountedInPitches() {
    double most = LIMITS.fineToBlurPitch().value();
    assertThat(new JointFitness(50, 50 * most * 0.99, 0).unfitBecause(LIMITS)).isEmpty();
    assertThat(new JointFitness(50, 50 * most * 1.01, 0).unfitBecause(LIMITS).orElseThrow())
        .contains("focus");
  }

  @Test
  void aJointThatGlareBurnsOutIsNotJudged() {
    double most = LIMITS.burntMost().value();
    assertThat(new JointFitness(50, 1, most - 0.01).unfitBecause(LIMITS)).isEmpty();
    assertThat(new JointFitness(50, 1, most + 0.01).unfitBecause(LIMITS).orElseThrow())
        .contains("glare");
  }
}
