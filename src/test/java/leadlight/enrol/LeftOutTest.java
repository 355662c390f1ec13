package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.enrol.learn.Enrolment.Kind;
import org.junit.jupiter.api.Test;

class LeftOutTest {

  private static Mock threeOfEach(double odd) {
    return new Mock()
        .photo(Kind.SOUND, 10, -0.15)
        .photo(Kind.SOUND, 10, -0.15)
        .photo(Kind.SOUND, 10, -0.15)
        .photo(Kind.UNSOLDERED, 10, 0.15)
        .photo(Kind.UNSOLDERED, 10, 0.15)
        .photo(Kind.UNSOLDERED, 10, odd);
  }

  @Test
  void jointsLikeThoseOfOtherPhotosDoNotPass() {
    assertThat(LeftOut.of(threeOfEach(0.15).enrolment())).isEqualTo(new LeftOut(30, 0, 30, 0));
  }

  @Test
  void anUnsolderedPhotoThatLooksSoundPassesWhereItIsLeftOut() {
    LeftOut count = LeftOut.of(threeOfEach(-0.15).enrolment());
    assertThat(count.unsoldered()).isEqualTo(30);
    assertThat(count.passed()).isBetween(1, 10);
  }

  @Test
  void withTwoPhotosOfAKindNothingOfThatKindIsCounted() {
    LeftOut count = LeftOut.of(Mock.twoOfEach().enrolment());
    assertThat(count).isEqualTo(new LeftOut(0, 0, 0, 0));
  }
}
