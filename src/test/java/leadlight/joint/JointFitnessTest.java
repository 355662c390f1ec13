package leadlight.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
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

  @Test
  void focusChangesEvenlyAlongARow() {
    List<JointFitness> row =
        DoubleStream.of(2.0, 2.1, 5.0, 2.3, 2.4, 2.5)
            .mapToObj(blur -> new JointFitness(50, OptionalDouble.of(blur), 0.1, 0))
            .toList();

    List<JointFitness> alike = JointFitness.focusedAlike(row);

    assertThat(alike.get(2).blurPx()).as("soft solder, not soft focus").hasValue(2.3);
    assertThat(alike.get(5).blurPx()).hasValue(2.4);
    assertThat(alike).extracting(JointFitness::burntShare).containsOnly(0.1);
  }

  @Test
  void anEdgelessJointDoesNotBorrowItsNeighboursFocus() {
    JointFitness sharp = new JointFitness(50, OptionalDouble.of(1), 0, 0);
    JointFitness flat = new JointFitness(50, OptionalDouble.empty(), 0, 0);

    assertThat(JointFitness.focusedAlike(List.of(sharp, flat, sharp)).get(1).blurPx()).isEmpty();
  }
}
