package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

  @Test
  void theFitLeavesNoSlope() {
    List<Enrolment.Shown> shown = joints(40, 0.05, 0);
    Enrolment.Line line = ShrunkLine.of(shown, TUNING);
    double slope = TUNING.pullOfGeneral().value() * (line.general() - 1);
    assertThat(slope).as("no joint has a general opinion, so the prior stays").isZero();
    double[] solved = Cholesky.solved(new double[][] {{4, 0}, {2, 3}}, new double[] {8, 7});
    assertThat(solved[0]).isCloseTo(1.25, within(1e-12));
    assertThat(solved[1]).isCloseTo(1.5, within(1e-12));
  }
}
