package leadlight.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import leadlight.model.Homography;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.row.RowSpec;
import leadlight.register.DrawnBoard;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class NudgeJudgeTest {

  private static final Homography HERE = DrawnBoard.camera(1, 0, 0, 0);
  private static final double PITCH_PX = DrawnBoard.row(HERE).pitchPx();

  private static NudgeJudge.Read read(double movedPitches) {
    DrawnBoard board = new DrawnBoard(3);
    RowSpec spec =
        RowSpec.plain(
            DrawnBoard.LEADS, DrawnBoard.PITCH_MM, OptionalDouble.empty(), OptionalDouble.empty());
    Homography there = DrawnBoard.camera(1, 0, movedPitches * PITCH_PX, 0);
    try (Frame rest = board.photo(HERE, light -> light, 3);
        Frame moved = board.photo(there, light -> light, 3)) {
      return new NudgeJudge(rest, DrawnBoard.row(HERE), spec).read(moved, "b.jpg", "");
    }
  }

  @Test
  void aPhotoFromAlmostTheSamePlaceIsSearchedForAPick() {
    assertThat(read(0.4).pushed().reason()).contains(new NoteOfPhoto.NoPick());
  }

  @Test
  void aPhotoMovedByMorePinsThanAreSearchedIsNotReadOnePinOff() {
    assertThat(read(5).pushed().reason())
        .hasValueSatisfying(why -> assertThat(why).isInstanceOf(NoteOfPhoto.OtherRow.class));
  }
}
