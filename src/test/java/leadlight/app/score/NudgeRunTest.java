package leadlight.app.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.remark.NoteOfPhoto;
import leadlight.model.result.Nudge;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NudgeRunTest {

  @TempDir private Path folder;

  @Test
  void thePhotoAtRestIsNoPhotoOfAPushedLeadThoughItLiesInTheFolder() throws IOException {
    Path rest = Files.createFile(folder.resolve("a.jpg"));
    Path second = Files.createFile(folder.resolve("c.PNG"));
    Path first = Files.createFile(folder.resolve("b.jpg"));
    Files.createFile(folder.resolve("notes.txt"));
    Files.createFile(folder.resolve("._b.jpg"));
    assertThat(NudgeRun.pushed(rest, List.of(folder))).containsExactly(first, second);
  }

  /**
   * A scene (models/scene/mix-nudge.json, seed 64, set 21, photo d): pin 14 is loose and gives way
   * by 57 um, and the pick is taken to push pin 13, which holds.
   */
  @Test
  void aLeadIsNotFirmWhereTheOneOnThePicksOtherSideMayHaveBeenPushed() {
    Settings settings =
        new Settings(
            RowSpec.plain(24, 0.5, OptionalDouble.empty(), OptionalDouble.empty()),
            2,
            AcceptanceSet.DEFAULT_ID,
            Optional.empty(),
            Opinions.MEASURES);
    Path pictures = Path.of("src/test/resources/leadlight/motion");
    try (NudgeRun.Result read =
        new NudgeRun(settings, AcceptanceSet.load(AcceptanceSet.DEFAULT_ID))
            .read(pictures.resolve("rest.jpg"), List.of(pictures.resolve("pushed.jpg")))) {
      assertThat(read.nudge().leads().get(12).reason()).contains(new NoteOfPhoto.OtherMayYield(14));
      assertThat(read.nudge().leads()).noneMatch(lead -> lead.motion() == Nudge.Motion.FIRM);
    }
  }
}
