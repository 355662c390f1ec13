package leadlight.summary;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import leadlight.record.Stage;
import org.junit.jupiter.api.Test;

class DpmoTest {

  /** Newcombe 1998, Statistics in Medicine 17, 857-872, table I, Wilson's score method. */
  @Test
  void theIntervalIsNewcombesPublishedOne() {
    Dpmo dpmo = new Dpmo(Optional.of(Stage.FINAL), 15, 148);

    assertThat(dpmo.value()).isEqualTo(1e6 * 15 / 148);
    assertThat(dpmo.lower()).isCloseTo(62_400, within(50.0));
    assertThat(dpmo.upper()).isCloseTo(160_500, within(50.0));
    assertThat(new Dpmo(Optional.of(Stage.FINAL), 0, 20).upper()).isCloseTo(161_100, within(50.0));
  }

  @Test
  void withoutOpportunitiesNothingIsKnown() {
    Dpmo none = new Dpmo(Optional.of(Stage.FINAL), 0, 0);

    assertThat(none.lower()).isZero();
    assertThat(none.upper()).isEqualTo(1e6);
  }
}
