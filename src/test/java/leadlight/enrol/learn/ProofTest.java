package leadlight.enrol.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.enrol.Mock;
import org.junit.jupiter.api.Test;

class ProofTest {

  private static Proof of(int sound, int soundPhotos, int unsoldered, int unsolderedPhotos) {
    Mock mock = new Mock();
    for (int i = 0; i < soundPhotos; i++) {
      mock.photo(Enrolment.Kind.SOUND, part(sound, soundPhotos, i), -0.1);
    }
    for (int i = 0; i < unsolderedPhotos; i++) {
      mock.photo(Enrolment.Kind.UNSOLDERED, part(unsoldered, unsolderedPhotos, i), 0.1);
    }
    return mock.bench().proof();
  }

  private static int part(int joints, int photos, int which) {
    return joints * (which + 1) / photos - joints * which / photos;
  }

  @Test
  void aBorderBelowFiftySixJointsShowsFivePercentAndTwentyNineShowTen() {
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
