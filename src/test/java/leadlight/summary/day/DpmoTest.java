package leadlight.summary.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import leadlight.record.scoring.Stage;
import leadlight.statistics.ClusterRate;
import org.junit.jupiter.api.Test;

class DpmoTest {

  private static Dpmo boards(ClusterRate.Part... boards) {
    return new Dpmo(Optional.of(Stage.FINAL), new ClusterRate(List.of(boards)), 0);
  }

  /** Newcombe 1998, Statistics in Medicine 17, 857-872, table I, Wilson's score method. */
  @Test
  void theIntervalOfJointsAloneIsNewcombesPublishedOne() {
    Dpmo dpmo = boards(new ClusterRate.Part(15, 100), new ClusterRate.Part(0, 48));

    assertThat(dpmo.value()).isCloseTo(1e6 * 15 / 148, within(1e-6));
    assertThat(dpmo.plainLower()).isCloseTo(62_400, within(50.0));
    assertThat(dpmo.plainUpper()).isCloseTo(160_500, within(50.0));
  }

  @Test
  void joints_of_one_board_are_alike_so_its_interval_is_wider() {
    Dpmo dpmo = boards(new ClusterRate.Part(15, 100), new ClusterRate.Part(0, 48));

    assertThat(dpmo.lower()).isLessThan(dpmo.plainLower());
    assertThat(dpmo.upper()).isGreaterThan(dpmo.plainUpper());
  }

  @Test
  void withoutOpportunitiesNothingIsKnown() {
    Dpmo none = boards();

    assertThat(none.lower()).isZero();
    assertThat(none.upper()).isEqualTo(1e6);
  }
}
