package leadlight.report.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import leadlight.model.Homography;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.report.json.Scenes;
import leadlight.report.paint.Pen;
import leadlight.report.strip.StripGeometry;
import leadlight.report.words.ReportContext;
import leadlight.vision.Canvas;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AnnotatedPictureTest {

  @Test
  void no_mark_lies_on_the_straightened_row() {
    ScoredPhoto scored = Scenes.scored("dev-902");
    StripGeometry geometry =
        new StripGeometry(
            (RowOutcome.Found) scored.row(), scored.settings().row(), scored.joints(), 1363);
    List<Integer> strip = geometry.strips().get(0);
    Homography map = geometry.toPhoto(strip);
    int width = geometry.widthPx(strip);
    int height = geometry.heightPx();
    try (Frame photo = Scenes.picture("dev-902");
        Canvas bare = new Canvas(width, height, Pen.PAPER);
        Frame annotated = decoded(AnnotatedPicture.png(scored, photo, Scenes.CONTEXT))) {
      bare.pasteStraightened(photo, map, 0, 0, width, height);
      try (Frame untouched = decoded(bare.png())) {
        assertThat(places(annotated, untouched)).isEqualTo(1);
      }
    }
  }

  @Test
  void a_photo_of_the_picture_s_width_is_shown_pixel_by_pixel_without_marks() {
    Scenes.Moved moved = Scenes.moved("dev-902", 0, 1528, 400);
    try (moved;
        Frame annotated =
            decoded(AnnotatedPicture.png(moved.scored(), moved.picture(), Scenes.CONTEXT))) {
      assertThat(places(annotated, moved.picture())).isEqualTo(1);
    }
  }

  /** How often a picture occurs in another, compared row by row. */
  private static int places(Frame whole, Frame part) {
    byte[] big = whole.rgb();
    byte[] small = part.rgb();
    int row = 3 * part.widthPx();
    int stride = 3 * whole.widthPx();
    int count = 0;
    for (int y = 0; y + part.heightPx() <= whole.heightPx(); y++) {
      int start = y * stride + 3 * 36;
      boolean same = true;
      for (int i = 0; same && i < part.heightPx(); i++) {
        int at = start + i * stride;
        same = Arrays.equals(big, at, at + row, small, i * row, (i + 1) * row);
      }
      count += same ? 1 : 0;
    }
    return count;
  }

  @ParameterizedTest
  @CsvSource({"37, 300, 200", "90, 480, 640", "180, 8000, 600", "270, 600, 5000"})
  void the_picture_has_one_width_at_any_size_of_the_photo(int angle, int width, int height) {
    try (Scenes.Moved moved = Scenes.moved("dev-012", angle, width, height);
        Frame annotated =
            decoded(AnnotatedPicture.png(moved.scored(), moved.picture(), Scenes.CONTEXT))) {
      assertThat(annotated.widthPx()).isEqualTo(1600);
      assertThat(annotated.heightPx()).isBetween(700, 2500);
    }
  }

  @Test
  void a_photo_without_a_row_still_gets_its_picture() {
    try (Frame photo = Scenes.picture("dev-023");
        Frame annotated =
            decoded(AnnotatedPicture.png(Scenes.withoutRow("dev-023"), photo, Scenes.CONTEXT))) {
      assertThat(annotated.heightPx()).isGreaterThan(600);
    }
  }

  @Test
  void the_picture_speaks_the_language_of_the_pages() {
    ScoredPhoto scored = Scenes.scored("dev-902");
    ReportContext german = Scenes.context("de");
    assertThat(Entry.of(scored.joints(), german))
        .extracting(Entry::what)
        .isSubsetOf(
            "Lotbrücke",
            "offene Lötstelle",
            "zu wenig Lot",
            "keine Kehle; eher offene Lötstelle",
            "keine Kehle; eher zu wenig Lot",
            "zu viel Lot",
            "Bein neben der Lötfläche",
            "nicht beurteilt");
    try (Frame photo = Scenes.picture("dev-902")) {
      assertThat(AnnotatedPicture.png(scored, photo, german))
          .isNotEqualTo(AnnotatedPicture.png(scored, photo, Scenes.CONTEXT));
    }
  }

  private static Frame decoded(byte[] png) {
    return Codec.decode(png).orElseThrow();
  }
}
