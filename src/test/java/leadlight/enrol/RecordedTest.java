package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import leadlight.enrol.learn.Enrolment;
import leadlight.enrol.learn.Enrolment.Fold;
import leadlight.enrol.learn.Enrolment.Kind;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.enrol.learn.Proof;
import leadlight.model.picture.RowPictures;
import org.junit.jupiter.api.Test;

/** Joints out of the record teach, and prove nothing. */
class RecordedTest {

  private static final Setting DARK = new Setting(40, Optional.of(0.03), 20, 100, true);

  private final Bench shown = Mock.twoOfEach().bench();

  @Test
  void theyAddNothingToWhatIsPromised() {
    Proof proof = Mock.twoOfEach().recorded(40, 0.06, false, Mock.SETTING).bench().proof();
    assertThat(proof).isEqualTo(shown.proof());
  }

  @Test
  void aBenchOfThemAloneVouchesForNothing() {
    Mock mock = new Mock();
    for (int i = 0; i < 2; i++) {
      mock.recorded(30, -0.3, true, Mock.SETTING).recorded(30, 0.3, false, Mock.SETTING);
    }
    Bench bench = mock.bench();
    assertThat(bench.bordered()).isTrue();
    assertThat(bench.vouches()).isFalse();
    assertThat(bench.proof().unsolderedMissing()).isPositive();
  }

  @Test
  void anUnsolderedOneDrawsABorderOfItsOwnThatNoJointLikeItPasses() {
    Enrolment taught = Mock.twoOfEach().recorded(3, -0.02, false, Mock.SETTING).enrolment();
    Fold own = taught.lines().get(taught.lines().size() - 1);
    assertThat(own.solderedBelow()).isPresent();
    assertThat(own.line().of(0, Mock.features(-0.02))).isGreaterThan(own.solderedBelow().get());
  }

  @Test
  void theyWidenNeitherTheCloudNorTheLightThatIsKnown() {
    Bench taught =
        Mock.twoOfEach().recorded(15, 3, false, DARK).recorded(15, -3, true, DARK).bench();
    assertThat(taught.enrolment().cloud())
        .usingRecursiveComparison()
        .isEqualTo(shown.enrolment().cloud());
    assertThat(taught.of(look(DARK)).notAs()).contains("light");
  }

  @Test
  void fewerJointsThanAPromiseNeedsVouchForNothingThoughAllElseFits() {
    Bench few =
        new Mock()
            .photo(Kind.SOUND, 15, -0.3)
            .photo(Kind.SOUND, 15, -0.3)
            .photo(Kind.UNSOLDERED, 14, 0.3)
            .photo(Kind.UNSOLDERED, 14, 0.3)
            .bench();
    assertThat(few.bordered()).isTrue();
    assertThat(few.apart()).isEmpty();
    assertThat(few.vouches()).isFalse();
    assertThat(few.of(look(Mock.SETTING)).judges()).isFalse();
  }

  @Test
  void bareLandsAloneAreABenchThatKnowsNothing() {
    assertThat(new Mock().photo(Kind.BARE, 15, 0.1).bench().vouches()).isFalse();
  }

  @Test
  void inALightInWhichOnlySoundRowsWereShownNothingIsVouchedFor() {
    Bench bench = Mock.twoOfEach().photo(Kind.SOUND, 15, -0.07, DARK).bench();
    assertThat(bench.vouches()).isTrue();
    assertThat(bench.of(look(DARK)).notAs()).contains("light");
    Bench other = Mock.twoOfEach().photo(Kind.UNSOLDERED, 15, 0.07, DARK).bench();
    assertThat(other.of(look(DARK)).notAs()).contains("light");
  }

  /** A row of grey pictures, 10 pixels a pitch. */
  private static RowLook look(Setting setting) {
    byte[] grey = new byte[RowPictures.PLANES * 20 * 30];
    RowPictures row = new RowPictures(20, 30, -1, -1.5, 10, List.of(grey), grey);
    return new RowLook(row, setting, List.of(new RowLook.Joint(true, 0)));
  }
}
