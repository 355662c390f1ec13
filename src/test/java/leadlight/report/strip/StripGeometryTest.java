package leadlight.report.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.report.json.Scenes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StripGeometryTest {

  private static final int WIDTH = 1360;

  @ParameterizedTest
  @CsvSource({"0, 300, 200", "37, 640, 480", "90, 1920, 1080", "180, 4000, 3000", "270, 800, 600"})
  void each_land_shows_above_its_number_at_any_angle_and_size(int angle, int width, int height) {
    try (Scenes.Moved moved = Scenes.moved("dev-012", angle, width, height)) {
      ScoredPhoto scored = moved.scored();
      StripGeometry geometry = geometry(scored);
      List<Integer> strip = geometry.strips().get(0);
      Homography toStrip = geometry.toPhoto(strip).inverse();
      double pitch = geometry.pxPerMm() * scored.settings().row().pitchMm();
      for (int index : strip) {
        Lead lead = scored.joints().get(index).joint().lead();
        PointPx toe = toStrip.map(lead.landToePx().x(), lead.landToePx().y());
        PointPx heel = toStrip.map(lead.landHeelPx().x(), lead.landHeelPx().y());
        assertThat(toe.x()).isCloseTo(geometry.acrossPx(strip, index), within(0.1 * pitch));
        assertThat(heel.y()).as("the body is above").isLessThan(toe.y()).isPositive();
        assertThat(toe.y()).isLessThan(geometry.heightPx());
      }
      assertThat(pitch).as("numbers have room").isGreaterThanOrEqualTo(46);
    }
  }

  @Test
  void a_row_numbered_from_the_right_is_shown_unmirrored() {
    ScoredPhoto scored = Scenes.scored("dev-012");
    RowOutcome.Found found = (RowOutcome.Found) scored.row();
    double span = scored.settings().row().spanMm();
    Homography fromTheRight = found.mmToPx().after(new Homography(-1, 0, span, 0, 1, 0, 0, 0, 1));
    RowOutcome.Found reversed =
        new RowOutcome.Found(
            fromTheRight,
            found.leads(),
            found.pitchPx(),
            found.angleRad() + Math.PI,
            found.scalePxPerMm(),
            found.bodySide(),
            1,
            0,
            List.of());
    StripGeometry geometry =
        new StripGeometry(reversed, scored.settings().row(), scored.joints(), WIDTH);
    List<Integer> strip = geometry.strips().get(0);
    assertThat(strip.get(0)).as("the last pin is the leftmost").isEqualTo(18);
    PointPx corner = geometry.toPhoto(strip).map(0, 0);
    PointPx right = geometry.toPhoto(strip).map(100, 0);
    assertThat(right.x()).as("left stays left").isGreaterThan(corner.x());
  }

  @Test
  void a_long_row_is_folded_with_each_pin_once_and_room_for_its_number() {
    ScoredPhoto scored = Scenes.scored("dev-012");
    RowSpec spec =
        RowSpec.plain(
            60, 0.5, scored.settings().row().leadWidthMm(), java.util.OptionalDouble.empty());
    StripGeometry geometry =
        new StripGeometry((RowOutcome.Found) scored.row(), spec, scored.joints(), WIDTH);
    assertThat(geometry.strips().stream().flatMap(List::stream).toList())
        .hasSize(60)
        .doesNotHaveDuplicates();
    for (List<Integer> strip : geometry.strips()) {
      assertThat(geometry.widthPx(strip)).isLessThanOrEqualTo(WIDTH);
    }
    assertThat(geometry.pxPerMm() * 0.5).isGreaterThanOrEqualTo(46);
  }

  private static StripGeometry geometry(ScoredPhoto scored) {
    return new StripGeometry(
        (RowOutcome.Found) scored.row(), scored.settings().row(), scored.joints(), WIDTH);
  }
}
