package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Kind;
import org.junit.jupiter.api.Test;

/** What was shown under the wrong name is told, where the other photos can tell. */
class OddOnesTest {

  private static Mock clear() {
    return new Mock()
        .photo(Kind.SOUND, 15, -0.3)
        .photo(Kind.SOUND, 15, -0.3)
        .photo(Kind.UNSOLDERED, 15, 0.3)
        .photo(Kind.UNSOLDERED, 15, 0.3);
  }

  @Test
  void whereAllIsAsShownNothingIsOdd() {
    assertThat(OddOnes.of(clear().enrolment())).isEmpty();
  }

  @Test
  void aRowOfTheWrongNameIsOddWithEachOfItsJoints() {
    Enrolment enrolment = clear().photo(Kind.SOUND, 15, 0.3).enrolment();
    assertThat(OddOnes.of(enrolment)).filteredOn(OddOnes.Odd::soldered).hasSize(15);
    assertThat(new Bench(enrolment).opinion(Mock.features(0.3), 0).side())
        .as("it vouches for none the more")
        .isNotEqualTo(leadlight.model.joint.BenchOpinion.Side.SOLDERED);
  }
}
