package leadlight.together;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import leadlight.model.Homography;
import leadlight.model.row.RowSpec;
import leadlight.register.DrawnBoard;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class PlacedTest {

  private static final Homography AFTER = DrawnBoard.camera(1, 0, 0, 0);
  private static final Homography BEFORE = DrawnBoard.camera(1.01, 0.01, 5, 3);

  private static Placed.Compared compared(DrawnBoard after, DrawnBoard before) {
    RowSpec spec =
        RowSpec.plain(
            DrawnBoard.LEADS, DrawnBoard.PITCH_MM, OptionalDouble.empty(), OptionalDouble.empty());
    try (Frame now = after.photo(AFTER, light -> light, 3);
        Frame then = before.photo(BEFORE, light -> light, 3)) {
      return new Placed().compare(now, DrawnBoard.row(AFTER), then, DrawnBoard.row(BEFORE), spec);
    }
  }

  @Test
  void aBoardThatWasPutDownAgainIsTheSameRow() {
    assertThat(compared(new DrawnBoard(1), new DrawnBoard(1)).oneRow()).isTrue();
  }

  @Test
  void anotherBoardOfTheSamePartUnderTheSameLampIsNotTheRowAsItWasSetDown() {
    // These two are alike (0.77), and their numberings agree.
    assertThat(compared(new DrawnBoard(1), new DrawnBoard(4)).oneRow()).isFalse();
  }
}
