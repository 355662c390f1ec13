package leadlight.joint.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import leadlight.model.remark.Doubt;
import org.junit.jupiter.api.Test;

class JointFitnessTest {

  private static final FitnessLimits LIMITS = FitnessLimits.builtIn();

  private static Optional<Doubt> unfit(double pitchPx, double blurPx, double burntShare) {
    return new JointFitness(pitchPx, OptionalDouble.of(blurPx), burntShare, 0)
        .unfitBecause(OptionalDouble.of(blurPx), LIMITS);
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
    assertThat(flat.unfitBecause(OptionalDouble.empty(), LIMITS))
        .contains(new Doubt.FocusUnknown());
  }

  private static List<JointFitness> row(double... blursPx) {
    return DoubleStream.of(blursPx)
        .mapToObj(blur -> new JointFitness(50, OptionalDouble.of(blur), 0, 0))
        .toList();
  }

  @Test
  void focusChangesEvenlyAlongARow() {
    List<JointFitness> row = row(2.0, 2.1, 4.2, 2.4, 2.5, 2.6);
    assertThat(JointFitness.focusPx(row, 2, LIMITS)).as("soft solder").hasValue(2.4);
    assertThat(JointFitness.focusPx(row, 3, LIMITS)).hasValue(2.5);
  }

  @Test
  void aJointThatIsBlurredByItselfStaysSo() {
    List<JointFitness> smeared = row(2.0, 2.1, 5.0, 2.3, 2.4);
    assertThat(JointFitness.focusPx(smeared, 2, LIMITS)).hasValue(5.0);
  }

  @Test
  void atTheEndsOfARowTheSofterCounts() {
    assertThat(JointFitness.focusPx(row(3.0, 2.5, 2.0, 2.0), 0, LIMITS)).hasValue(3.0);
    assertThat(JointFitness.focusPx(row(2.0, 2.5, 3.0, 3.5), 0, LIMITS)).hasValue(2.5);
  }

  @Test
  void anEdgelessJointDoesNotBorrowItsNeighboursFocus() {
    JointFitness sharp = new JointFitness(50, OptionalDouble.of(1), 0, 0);
    JointFitness flat = new JointFitness(50, OptionalDouble.empty(), 0, 0);
    assertThat(JointFitness.focusPx(List.of(sharp, flat, sharp), 1, LIMITS)).isEmpty();
  }

  @Test
  void onlyVeryLargeRowsAreMeasuredOnAHalvedPicture() {
    double most = LIMITS.blurPitchPxMost().value();
    assertThat(JointFitness.halvings(most / 8, most)).isZero();
    assertThat(JointFitness.halvings(most, most)).isZero();
    assertThat(JointFitness.halvings(most + 1, most)).isOne();
    assertThat(JointFitness.halvings(2 * most, most)).isOne();
    assertThat(JointFitness.halvings(2 * most + 1, most)).isEqualTo(2);
  }
}
