package leadlight.app.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Nudge.Motion;
import leadlight.model.result.Nudge.Moved;
import leadlight.model.result.Nudge.Pushed;
import leadlight.motion.NudgeJudge;
import leadlight.text.Messages;
import org.junit.jupiter.api.Test;

class PushListTest {

  private static final Messages WORDS = Messages.of("en");

  private final PushList list = new PushList(List.of(7, 8, 3));

  private static NudgeJudge.Read photo(int pin, Motion motion, Optional<Note> why) {
    return new NudgeJudge.Read(
        new Pushed("p.jpg", "", OptionalInt.of(pin), Optional.empty(), Optional.empty()),
        Optional.of(
            new Moved(
                pin,
                motion,
                OptionalDouble.of(-41.2),
                OptionalDouble.of(3.4),
                OptionalDouble.of(11),
                Optional.of("p.jpg"),
                why)));
  }

  @Test
  void aLeadThatMovesOrHoldsIsTickedOff() {
    assertThat(list.next(WORDS)).isEqualTo("Push pin 7; then 8, 3.");
    assertThat(list.took(photo(7, Motion.MOVES, Optional.empty()), WORDS))
        .isEqualTo("p.jpg: pin 7 moves by 41 micrometres (u 3): it is open.");
    assertThat(list.took(photo(3, Motion.FIRM, Optional.empty()), WORDS)).contains("pin 3 holds");
    assertThat(list.next(WORDS)).isEqualTo("Push pin 8, the last.");
    list.took(photo(8, Motion.FIRM, Optional.empty()), WORDS);
    assertThat(list.done()).isTrue();
  }

  @Test
  void aLeadOfWhichItCannotBeToldStaysOnTheListAndTheReasonIsSaid() {
    String said =
        list.took(
            photo(7, Motion.CANNOT_TELL, Optional.of(new NoteOfPhoto.MotionUnclear())), WORDS);
    assertThat(said).contains("Pin 7 is not judged").contains("(");
    assertThat(list.next(WORDS)).startsWith("Push pin 7;");
  }

  @Test
  void aPhotoOfNoPushSaysWhyAndTicksNothingOff() {
    NudgeJudge.Read none =
        new NudgeJudge.Read(
            new Pushed(
                "p.jpg",
                "",
                OptionalInt.empty(),
                Optional.empty(),
                Optional.of(new NoteOfPhoto.OtherRow(0.1))),
            Optional.empty());
    assertThat(list.took(none, WORDS)).startsWith("p.jpg: ").hasSizeGreaterThan(20);
    assertThat(list.done()).isFalse();
  }
}
