package leadlight.enrol.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import leadlight.data.Figure;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;

class ShrunkLineTest {

  private static final EnrolTuning TUNING = EnrolTuning.builtIn();

  /** Joints whose first number tells by {@code apart} what they are. */
  private static List<Enrolment.Shown> joints(int count, double apart, double general) {
    Random dice = new Random(7);
    List<Enrolment.Shown> joints = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      float[] features = new float[JointFeatures.COUNT];
      for (int k = 0; k < features.length; k++) {
        features[k] = (float) dice.nextGaussian() * 0.1f;
      }
      boolean soldered = i % 2 == 0;
      for (int k = 0; k < 20; k++) {
        features[k] += (float) (soldered ? -apart : apart);
      }
      joints.add(
          new Enrolment.Shown(i % 4 / 2, i + 1, soldered, soldered ? -general : general, features));
    }
    return joints;
  }

  @Test
  void whatTellsJointsApartIsLearned() {
    List<Enrolment.Shown> shown = joints(40, 0.1, 0);
    Enrolment.Line line = ShrunkLine.of(shown, TUNING);
    for (Enrolment.Shown joint : joints(200, 0.1, 0).subList(40, 200)) {
      assertThat(line.of(0, joint.features()) < 0).isEqualTo(joint.soldered());
    }
  }

  @Test
  void fewJointsMoveAGeneralOpinionThatIsRightLessThanMany() {
    double few = ShrunkLine.of(joints(4, 0, 2), TUNING).general();
    double many = ShrunkLine.of(joints(80, 0, 2), TUNING).general();
    assertThat(few).isBetween(1.0, many);
  }

  @Test
  void aGeneralOpinionThatIsWrongOnThisBenchLosesItsWeight() {
    assertThat(ShrunkLine.of(joints(80, 0.1, -2), TUNING).general()).isLessThan(0);
    assertThat(ShrunkLine.of(joints(4, 0, -0.5), TUNING).general()).isBetween(0.0, 1.0);
  }

  /**
   * What the fit makes least, written down from the javadoc alone: weighted logistic loss and half
   * the pull on each weight, that of a small picture for a number of variance one over all of them.
   */
  private static double loss(List<Enrolment.Shown> shown, Enrolment.Line line) {
    double loss = 0;
    double count = shown.size();
    for (Enrolment.Shown joint : shown) {
      long kind = shown.stream().filter(it -> it.soldered() == joint.soldered()).count();
      double z = line.of(joint.general(), joint.features());
      loss += count / 2 / kind * Math.log1p(Math.exp(joint.soldered() ? z : -z));
    }
    double shift = line.shift();
    for (JointFeatures.Block block : JointFeatures.BLOCKS) {
      double[] means = means(shown);
      double sum = 0;
      double weights = 0;
      for (int i = block.from(); i < block.to(); i++) {
        for (Enrolment.Shown joint : shown) {
          sum += Math.pow(joint.features()[i] - means[i], 2);
        }
        weights += line.weights()[i] * line.weights()[i];
        shift += line.weights()[i] * means[i];
      }
      double variance = sum / count / (block.to() - block.from()) * JointFeatures.COUNT;
      loss += TUNING.pullOfPicture().value() / 2 * weights * variance;
    }
    double pull = TUNING.pullOfGeneral().value() / 2;
    return loss + pull * (shift * shift + Math.pow(line.general() - 1, 2));
  }

  private static double[] means(List<Enrolment.Shown> shown) {
    double[] means = new double[JointFeatures.COUNT];
    for (int i = 0; i < means.length; i++) {
      int at = i;
      means[i] = shown.stream().mapToDouble(it -> it.features()[at]).average().orElseThrow();
    }
    return means;
  }

  private static Enrolment.Line moved(Enrolment.Line line, int place, double by) {
    double[] weights = line.weights().clone();
    if (place >= 0) {
      weights[place] += by;
    }
    return new Enrolment.Line(
        line.shift() + (place == -1 ? by : 0), line.general() + (place == -2 ? by : 0), weights);
  }

  @Test
  void theFitLeavesNoSlope() {
    List<Enrolment.Shown> shown = joints(41, 0.05, 1);
    Enrolment.Line line = ShrunkLine.of(shown, TUNING);
    double step = 1e-4;
    for (int place = -2; place < JointFeatures.COUNT; place++) {
      double slope =
          (loss(shown, moved(line, place, step)) - loss(shown, moved(line, place, -step)))
              / (2 * step);
      assertThat(slope).as("place " + place).isCloseTo(0, within(1e-6));
      assertThat(loss(shown, moved(line, place, 0.1))).isGreaterThan(loss(shown, line));
    }
  }

  @Test
  void aLineThatDoesNotStandStillIsRefused() {
    Figure one = new Figure(1, "a test");
    EnrolTuning t = TUNING;
    EnrolTuning hasty =
        new EnrolTuning(
            t.photosFrom(),
            t.promise(),
            t.soundFrom(),
            t.pullOfPicture(),
            t.pullOfGeneral(),
            t.generalTo(),
            t.margin(),
            t.likeTo(),
            t.rowLikeTo(),
            t.scaleTo(),
            t.blurTo(),
            t.lightTo(),
            t.sameTo(),
            t.sameRowTo(),
            t.checksFrom(),
            t.swappedTo(),
            t.missed(),
            t.leastSpread(),
            one,
            t.still());
    List<Enrolment.Shown> shown = joints(40, 0.1, 0);
    assertThatThrownBy(() -> ShrunkLine.of(shown, hasty))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no line settles");
  }

  @Test
  void equationsAreSolvedOrRefused() {
    double[] solved = Cholesky.solved(new double[][] {{4, 0}, {2, 3}}, new double[] {8, 7});
    assertThat(solved[0]).isCloseTo(1.25, within(1e-12));
    assertThat(solved[1]).isCloseTo(1.5, within(1e-12));
    assertThatThrownBy(() -> Cholesky.solved(new double[][] {{1, 0}, {2, 3}}, new double[] {1, 1}))
        .isInstanceOf(IllegalStateException.class);
  }
}
