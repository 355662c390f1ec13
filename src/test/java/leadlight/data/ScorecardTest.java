package leadlight.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import leadlight.model.remark.Reason;
import org.junit.jupiter.api.Test;

class ScorecardTest {

  private static final Scorecard.Tree STEP =
      new Scorecard.Tree(
          new int[] {0, -1, -1},
          new double[] {2, 0, 0},
          new int[] {1, 0, 0},
          new int[] {2, 0, 0},
          new double[] {0, -1, 3});

  private static final Scorecard.Tree OTHER_STEP =
      new Scorecard.Tree(
          new int[] {1, -1, -1},
          new double[] {0.5, 0, 0},
          new int[] {1, 0, 0},
          new int[] {2, 0, 0},
          new double[] {0, 0, 0.5});

  private static final Scorecard CARD =
      new Scorecard(
          "question", -2, List.of("a", "b"), new double[] {1, 0}, List.of(STEP, OTHER_STEP));

  private static ToDoubleFunction<String> signals(double a, double b) {
    return Map.of("a", a, "b", b)::get;
  }

  @Test
  void pointsAddUpToLogOdds() {
    assertThat(CARD.chance(signals(3, 1))).isCloseTo(1 / (1 + Math.exp(-1.5)), within(1e-12));
    assertThat(CARD.chance(signals(1, 0))).isCloseTo(1 / (1 + Math.exp(3)), within(1e-12));
  }

  @Test
  void aValueOnTheCutGoesLow() {
    assertThat(CARD.chance(signals(2, 0))).isEqualTo(CARD.chance(signals(1, 0)));
  }

  @Test
  void theSignalWhoseUsualValueWouldHelpMostIsTheFirstReason() {
    List<Reason> reasons = CARD.reasons(signals(3, 1));
    assertThat(reasons).extracting(Reason::signal).containsExactly("a", "b");
    assertThat(reasons.get(0).points()).isCloseTo(4, within(1e-12));
    assertThat(reasons.get(1).points()).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void aTreeThatWouldNeverEndIsRefused() {
    Scorecard.Tree loop =
        new Scorecard.Tree(
            new int[] {0}, new double[] {1}, new int[] {0}, new int[] {0}, new double[] {0});
    assertThatThrownBy(() -> new Scorecard("q", 0, List.of("a"), new double[] {0}, List.of(loop)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("leads nowhere");
  }
}
