package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProofTest {

  private static Proof of(int sound, int soundPhotos, int unsoldered, int unsolderedPhotos) {
    List<Enrolment.Shown> joints = new ArrayList<>();
    for (int i = 0; i < sound; i++) {
      joints.add(new Enrolment.Shown(i % soundPhotos, i + 1, true, 0, new float[0]));
    }
    for (int i = 0; i < unsoldered; i++) {
      int photo = soundPhotos + i % unsolderedPhotos;
      joints.add(new Enrolment.Shown(photo, i + 1, false, 0, new float[0]));
    }
    Enrolment enrolment =
        new Enrolment(
            Enrolment.SCHEMA,
            "ring",
            1,
            "reader",
            "both",
            List.of(),
            joints,
            List.of(),
            Optional.empty(),
            new Enrolment.Cloud(new double[0], 0, 0));
    return Proof.of(enrolment, EnrolTuning.builtIn());
  }

  @Test
  void fiftySixJointsNoneOfWhichPassedShowFivePercentAndTwentyNineShowTen() {
    assertThat(of(40, 2, 56, 2).upTo()).isCloseTo(0.0521, within(0.0001));
    assertThat(of(40, 2, 29, 2).upTo()).isLessThan(0.1);
    assertThat(of(40, 2, 28, 2).upTo()).isGreaterThan(0.1);
  }

  @Test
  void aJointTooFewOfEitherKindVouchesForNothing() {
    assertThat(of(29, 2, 29, 2).enough()).isTrue();
    assertThat(of(29, 2, 28, 2).enough()).isFalse();
    assertThat(of(29, 2, 28, 2).unsolderedMissing()).isEqualTo(1);
    assertThat(of(28, 2, 29, 2).soundMissing()).isEqualTo(1);
  }

  @Test
  void manyJointsOfOnePhotoVouchForNothing() {
    assertThat(of(60, 2, 300, 1).enough()).isFalse();
    assertThat(of(60, 2, 300, 1).unsolderedPhotosMissing()).isEqualTo(1);
    assertThat(of(300, 1, 60, 2).soundPhotosMissing()).isEqualTo(1);
  }

  @Test
  void countedByPhotosTwoPhotosPromiseHardlyAnything() {
    assertThat(of(40, 2, 56, 2).upToByPhotos()).isCloseTo(0.776, within(0.001));
  }
}
