package leadlight.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.DoubleUnaryOperator;
import leadlight.model.Homography;
import leadlight.model.row.Lead;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class RegistrarTest {

  private static final Homography HERE = DrawnBoard.camera(1, 0, 0, 0);
  private static final DoubleUnaryOperator SAME_LAMP = light -> light;

  /** A lamp under which metal that mirrored the first is dark, and the board as it was. */
  private static final DoubleUnaryOperator OTHER_LAMP = light -> light > 105 ? 240 - light : light;

  private final DrawnBoard board = new DrawnBoard(1);

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  /** How far off the middle of the toes is laid, pixels, the worst lead. */
  private static double worstPx(Overlay overlay, Homography there) {
    Homography gridToMm = overlay.fixed().grid().toMm();
    Homography toMoving = overlay.gridToMoving().after(gridToMm.inverse());
    double worst = 0;
    for (int i = 0; i < DrawnBoard.LEADS; i++) {
      double u = i * DrawnBoard.PITCH_MM;
      worst = Math.max(worst, toMoving.map(u, 0.8).distanceTo(there.map(u, 0.8)));
    }
    return worst;
  }

  private Overlay overlay(DrawnBoard other, Homography there, DoubleUnaryOperator lamp) {
    try (Frame rest = board.photo(HERE, SAME_LAMP, 3);
        Frame moved = other.photo(there, lamp, 3)) {
      return registrar(rest).overlay(moved);
    }
  }

  private Overlay byRows(
      DrawnBoard other, Homography there, Homography found, DoubleUnaryOperator lamp) {
    try (Frame rest = board.photo(HERE, SAME_LAMP, 3);
        Frame moved = other.photo(there, lamp, 3)) {
      return registrar(rest).overlay(moved, found);
    }
  }

  private static Registrar registrar(Frame rest) {
    return new Registrar(RegisterTuning.builtIn(), rest, DrawnBoard.row(HERE), DrawnBoard.PITCH_MM);
  }

  @Test
  void aShiftATurnAndAnotherScaleAreRecoveredToATenthOfAPixel() {
    Homography there = DrawnBoard.camera(1.04, 0.02, 17.3, -6.7);
    Overlay overlay = overlay(board, there, SAME_LAMP);
    assertThat(worstPx(overlay, there)).isLessThan(0.1);
    assertThat(overlay.likeness()).isGreaterThan(0.9);
  }

  @Test
  void aTiltIsRecovered() {
    Homography flat = DrawnBoard.camera(1, 0.01, 5, 3);
    Homography there = new Homography(1, 0, 0, 0, 1, 0, 6e-5, 3e-5, 1).after(flat);
    assertThat(worstPx(overlay(board, there, SAME_LAMP), there)).isLessThan(0.1);
  }

  @Test
  void exposureAndAFadingLampPlayNoPart() {
    Homography there = DrawnBoard.camera(1.01, -0.01, -8.2, 4.4);
    assertThat(worstPx(overlay(board, there, light -> 15 + 0.6 * light), there)).isLessThan(0.1);
  }

  @Test
  void underALampThatTurnsLightToDarkOutlinesStillFindThePlace() {
    Homography there = DrawnBoard.camera(1.02, 0.015, 9, -4);
    Homography found = there.after(new Homography(1, 0, 0.04, 0, 1, -0.05, 0, 0, 1));
    // What 95 of 100 pairs of path-traced rows under several lamps keep to, 0.06 pitch.
    double least = 0.06 * DrawnBoard.row(there).pitchPx();
    assertThat(worstPx(byRows(board, there, found, OTHER_LAMP), there)).isLessThan(least);
  }

  @Test
  void aRowCountedOnePinOffIsCountedRight() {
    Homography there = DrawnBoard.camera(1.02, 0.01, 6, 2);
    Homography onePinOff = there.after(new Homography(1, 0, DrawnBoard.PITCH_MM, 0, 1, 0, 0, 0, 1));
    Overlay overlay = byRows(board, there, onePinOff, SAME_LAMP);
    assertThat(worstPx(overlay, there)).isLessThan(0.3);
    assertThat(overlay.margin()).isGreaterThan(0.3);
  }

  @Test
  void anotherBoardOfTheSamePartHasLittleOfThisRowsOwn() {
    Homography there = DrawnBoard.camera(1, 0, 4, 4);
    Overlay same = byRows(board, there, there, SAME_LAMP);
    Overlay other = byRows(new DrawnBoard(2), there, there, SAME_LAMP);
    assertThat(same.ownLikeness()).isGreaterThan(0.5);
    assertThat(other.ownLikeness()).isLessThan(0.11);
  }

  @Test
  void overAPictureOfNothingTheStepsDoNotRunAway() {
    try (Frame rest = board.photo(HERE, SAME_LAMP, 3);
        Frame nothing = board.photo(HERE, light -> 90, 25)) {
      Overlay overlay = registrar(rest).overlay(nothing);
      Lead first = DrawnBoard.row(HERE).leads().get(0);
      Homography toMoving = overlay.toMoving(registrar(rest).gridToPhoto());
      double pixel =
          toMoving
              .map(first.toePx().x(), first.toePx().y())
              .distanceTo(toMoving.map(first.toePx().x() + 1, first.toePx().y()));
      // Three levels, each allowed to double or halve.
      assertThat(pixel).isBetween(1 / 8.0, 8.0);
      assertThat(overlay.likeness()).isLessThan(0.3);
    }
  }
}
