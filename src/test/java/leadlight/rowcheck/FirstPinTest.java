package leadlight.rowcheck;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.row.RowOutcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FirstPinTest {

  private static final RowScene EVEN = RowScene.named("bent-end");
  private static final RowScene UNEVEN = RowScene.named("uneven");

  @ParameterizedTest
  @ValueSource(ints = {-2, -1, 0, 1, 2})
  void anEvenRowFoundUpToTwoLeadsOffIsCountedFromItsFirst(int pins) {
    RowOutcome.Found off = MovedRow.byPins(EVEN.trueRow(), pins);
    assertThat(EVEN.offInStep(off)).isLessThan(0.1);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 0, 1})
  void anUnevenRowFoundALeadOffIsMovedToWhereAllItsLandsFit(int pitches) {
    RowOutcome.Found off = MovedRow.by(UNEVEN.trueRow(), pitches, 0, 0);
    assertThat(UNEVEN.offInStep(off)).isLessThan(0.1);
  }

  /** Uneven rows are not counted by their metal, so that only the reader's count can do it. */
  @ParameterizedTest
  @ValueSource(ints = {-1, 1})
  void aRowIsScoredAsCounted(int pitches) {
    RowOutcome.Found off = MovedRow.by(UNEVEN.trueRow(), pitches, 0, 0);
    assertThat(UNEVEN.offWhenScored(off)).isLessThan(0.1);
  }

  @Test
  void theTrueRowEndsAtItsEndsAndOneALeadOffDoesNot() {
    assertThat(EVEN.endsAtItsEnds(EVEN.trueRow())).isTrue();
    assertThat(EVEN.endsAtItsEnds(MovedRow.byPins(EVEN.trueRow(), 1))).isFalse();
    assertThat(EVEN.endsAtItsEnds(MovedRow.byPins(EVEN.trueRow(), -1))).isFalse();
  }
}
