package leadlight.joint.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import leadlight.data.Scorecard;
import leadlight.joint.cut.Signals;
import org.junit.jupiter.api.Test;

class TrendTest {

  private static Scorecard.Tree step(int low, int high) {
    return new Scorecard.Tree(
        new int[] {0, -1, -1},
        new double[] {0.5, 0, 0},
        new int[] {low, 0, 0},
        new int[] {high, 0, 0},
        new double[] {0, -1, 2});
  }

  @Test
  void aTrendIsItsStartAndTheLeavesThatTheSignalsLeadTo() {
    Trend trend = new Trend("a number", 10, List.of("x"), List.of(step(1, 2), step(1, 2)));
    assertThat(trend.of(new Signals().put("x", 0.5))).isEqualTo(8);
    assertThat(trend.of(new Signals().put("x", 0.6))).isEqualTo(14);
  }

  @Test
  void aTreeThatLeadsBackIsRefused() {
    assertThatThrownBy(() -> new Trend("a number", 0, List.of("x"), List.of(step(0, 2))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
