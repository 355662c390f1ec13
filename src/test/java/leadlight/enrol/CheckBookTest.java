package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import leadlight.enrol.learn.Enrolment.Setting;
import leadlight.model.UserError;
import leadlight.model.picture.RowPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The daily photos of one known board. */
class CheckBookTest {

  @TempDir private Path benches;

  private static RowLook look(int level, int joints) {
    return look(level, joints, Optional.of(0.03));
  }

  private static RowLook look(int level, int joints, Optional<Double> blurPitch) {
    byte[] picture = new byte[RowPictures.PLANES * 20 * 30];
    Arrays.fill(picture, 0, 20 * 30, (byte) level);
    RowPictures row =
        new RowPictures(20, 30, -1, -1.5, 10, Collections.nCopies(joints, picture), picture);
    Setting setting = new Setting(40, blurPitch, 20, 200, true);
    return new RowLook(row, setting, Collections.nCopies(joints, new RowLook.Joint(true, 0)));
  }

  private static CheckBook days(int... levels) {
    CheckBook book = new CheckBook(CheckBook.SCHEMA, List.of());
    for (int i = 0; i < levels.length; i++) {
      book = book.and("day-" + i, "%064x".formatted(i), look(levels[i], 19));
    }
    return book;
  }

  @Test
  void shadeIsTheDistanceFromTheOtherFirstPhotos() {
    List<Double> shade = days(100, 102, 98, 100, 100, 100, 100, 100, 128).figures().get("shade");
    assertThat(shade.get(8)).isCloseTo(28.0 / 128, within(0.001));
    assertThat(shade.get(1)).isCloseTo(16.0 / 7 / 128, within(0.001));
  }

  @Test
  void whatIsKeptIsReadBack() throws IOException {
    CheckBook book = days(100, 101);
    Files.createDirectories(benches.resolve("ring"));
    book.write(benches, "ring");
    assertThat(CheckBook.in(benches, "ring")).usingRecursiveComparison().isEqualTo(book);
    assertThat(CheckBook.in(benches, "torch").checks()).isEmpty();
  }

  @Test
  void theSamePhotoOrAnotherBoardIsRefused() {
    CheckBook book = days(100, 101);
    assertThatThrownBy(() -> book.and("day-9", "%064x".formatted(0), look(100, 19)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("in the chart already");
    assertThatThrownBy(() -> book.and("day-9", "%064x".formatted(9), look(100, 12)))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("a row of 12 joints, the check board has 19");
  }

  @Test
  void aPhotoWithoutASharpEdgeIsRefusedForTheChartOfBlurWouldEndWithIt() {
    CheckBook book = days(100, 101);
    assertThatThrownBy(
            () -> book.and("day-9", "%064x".formatted(9), look(100, 19, Optional.empty())))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no edge tells how sharp it is");
    assertThat(book.figures()).containsKey("edge blur, pitches");
  }
}
