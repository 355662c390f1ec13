package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.model.joint.Familiarity;
import org.junit.jupiter.api.Test;

class SameRowTest {

  private final SameRow join = new SameRow();

  @Test
  void onePhotoSaysWhatItSays() {
    assertThat(join.pooled(List.of(0.3))).isCloseTo(0.3, within(1e-9));
  }

  @Test
  void photosThatAgreeAreSurerTogetherButLessThanIfTheyWereIndependent() {
    double both = join.pooled(List.of(0.01, 0.01));
    // Bayes with a tenth before: odds 1/99 each, over the prior's 1/9, twice.
    double independent = (1.0 / 99 * 9) * (1.0 / 99 * 9) / 9;
    assertThat(both).isLessThan(0.01).isGreaterThan(independent);
  }

  @Test
  void whatIsSureOutweighsWhatSaysNothing() {
    assertThat(join.pooled(List.of(0.99, 0.1))).isGreaterThan(0.95);
    assertThat(join.pooled(List.of(0.002, 0.1))).isLessThan(0.01);
  }

  @Test
  void photosThatContradictEachOtherLeaveADoubt() {
    assertThat(join.pooled(List.of(0.99, 0.002))).isBetween(0.05, 0.95);
  }

  @Test
  void theOrderOfPhotosPlaysNoPart() {
    assertThat(join.pooled(List.of(0.7, 0.02, 0.2)))
        .isCloseTo(join.pooled(List.of(0.2, 0.7, 0.02)), within(1e-12));
  }

  @Test
  void photosAreAsUnfamiliarAsTheMostUnfamiliarOfThem() {
    assertThat(SameRow.make(List.of(new Familiarity(0, true), new Familiarity(1, true))))
        .isEqualTo(new Familiarity(1, true));
  }
}
