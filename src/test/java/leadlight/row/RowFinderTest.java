package leadlight.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.row.Lead;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Drawn rows: exact places, so that errors show in fractions of a pixel. */
class RowFinderTest {

  private static final RowSpec TWELVE =
      RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty());

  @AfterEach
  void allFramesAreClosed() {
    assertThat(Frame.live()).isZero();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, 37, 90, 180, 233, 270})
  void findsTheToesAtAnyAngle(double degrees) {
    DrawnRow row = new DrawnRow(12, 30, Math.toRadians(degrees));
    try (Frame frame = row.draw(700, 700)) {
      RowOutcome.Found found = found(frame, TWELVE);
      for (Lead lead : found.leads()) {
        PointPx toe = row.toe(lead.pin());
        assertThat(lead.toePx().distanceTo(toe)).as("pin %d", lead.pin()).isLessThan(2.5);
      }
      assertThat(found.pitchPx()).isBetween(29.8, 30.2);
      assertThat(found.scalePxPerMm()).isBetween(59.6, 60.4);
    }
  }

  @Test
  void theMapTakesMillimetresFromPinOneToTheLeads() {
    DrawnRow row = new DrawnRow(12, 30, 0);
    try (Frame frame = row.draw(600, 400)) {
      RowOutcome.Found found = found(frame, TWELVE);
      Homography map = found.mmToPx();
      PointPx first = map.map(0, 0);
      PointPx last = map.map(5.5, 0);
      assertThat(first.x()).isBetween(row.toe(1).x() - 1.5, row.toe(1).x() + 1.5);
      assertThat(last.x()).isBetween(row.toe(12).x() - 1.5, row.toe(12).x() + 1.5);
      assertThat(found.bodySide()).isEqualTo(BodySide.ABOVE);
    }
  }

  @Test
  void pinOneIsTheRightmostIfTheConnectorSaysSo() {
    RowSpec reversed =
        new RowSpec("plain", TWELVE.lands(), TWELVE.pitchMm(), OptionalDouble.empty(), true);
    DrawnRow row = new DrawnRow(12, 30, 0);
    try (Frame frame = row.draw(600, 400)) {
      RowOutcome.Found found = found(frame, reversed);
      assertThat(found.leads().get(0).toePx().x()).isGreaterThan(found.leads().get(11).toePx().x());
    }
  }

  @Test
  void halfTheLeadsMissingDoesNotMoveTheRow() {
    DrawnRow row = new DrawnRow(12, 30, 0).without(2, 3, 5, 8, 9, 11);
    try (Frame frame = row.draw(600, 400)) {
      RowOutcome.Found found = found(frame, TWELVE);
      assertThat(found.leads().get(0).toePx().distanceTo(row.toe(1))).isLessThan(5);
      assertThat(found.leads().get(11).toePx().distanceTo(row.toe(12))).isLessThan(5);
    }
  }

  @Test
  void refusesARowThatGoesOnBeyondTheLeadsTold() {
    DrawnRow row = new DrawnRow(20, 25, 0);
    try (Frame frame = row.draw(700, 400)) {
      assertThat(reason(frame, TWELVE)).isEqualTo(new NoteOfRow.MoreLeads(12));
    }
  }

  @Test
  void refusesARowWithFewerLeadsThanTold() {
    DrawnRow row = new DrawnRow(9, 30, 0);
    try (Frame frame = row.draw(700, 400)) {
      assertThat(reason(frame, TWELVE)).isEqualTo(new NoteOfRow.FewerLeads(12));
    }
  }

  @Test
  void refusesAPictureWithoutARow() {
    byte[] flat = new byte[640 * 480 * 3];
    java.util.Arrays.fill(flat, (byte) 90);
    try (Frame frame = Frame.ofRgb(640, 480, flat)) {
      assertThat(reason(frame, TWELVE)).isEqualTo(new NoteOfRow.NoRow(12));
    }
  }

  @Test
  void ofTwoRowsAlikeItAsksForThePointAndThenTakesTheOnePointedAt() {
    DrawnRow upper = new DrawnRow(12, 30, 0).at(350, 250);
    DrawnRow lower = new DrawnRow(12, 30, Math.PI).at(350, 650);
    try (Frame frame = upper.drawWith(lower, 700, 900)) {
      assertThat(reason(frame, TWELVE)).isEqualTo(new NoteOfRow.TwoRows(12));
      RowOutcome outcome =
          new RowFinder()
              .find(frame, TWELVE, Optional.of(RowHint.in(new RowHint.Box(350, 250, 0, 0))));
      assertThat(outcome).isInstanceOf(RowOutcome.Found.class);
      PointPx toe = ((RowOutcome.Found) outcome).leads().get(0).toePx();
      assertThat(toe.distanceTo(upper.toe(1))).isLessThan(2.5);
    }
  }

  @ParameterizedTest
  @CsvSource({"ABOVE,ABOVE", "BELOW,BELOW"})
  void theBodyLiesWhereAPersonSaysItDoes(BodySide told, BodySide expected) {
    try (Frame frame = new DrawnRow(12, 30, 0).draw(600, 400)) {
      assertThat(told(frame, told)).isInstanceOf(RowOutcome.Found.class);
      assertThat(((RowOutcome.Found) told(frame, told)).bodySide()).isEqualTo(expected);
    }
  }

  @ParameterizedTest
  @EnumSource(
      value = BodySide.class,
      names = {"LEFT", "RIGHT"})
  void noRowRunsTowardsTheBody(BodySide told) {
    try (Frame frame = new DrawnRow(12, 30, 0).draw(600, 400)) {
      assertThat(told(frame, told)).isInstanceOf(RowOutcome.NotFound.class);
    }
  }

  private static RowOutcome told(Frame frame, BodySide side) {
    return new RowFinder().find(frame, TWELVE, RowHint.of(Optional.empty(), Optional.of(side)));
  }

  @Test
  void sameInputSameAnswer() {
    DrawnRow row = new DrawnRow(12, 30, 0.3);
    try (Frame frame = row.draw(600, 500)) {
      assertThat(found(frame, TWELVE)).isEqualTo(found(frame, TWELVE));
    }
  }

  private static RowOutcome.Found found(Frame frame, RowSpec spec) {
    RowOutcome outcome = new RowFinder().find(frame, spec, Optional.empty());
    assertThat(outcome).isInstanceOf(RowOutcome.Found.class);
    return (RowOutcome.Found) outcome;
  }

  private static Note reason(Frame frame, RowSpec spec) {
    RowOutcome outcome = new RowFinder().find(frame, spec, Optional.empty());
    assertThat(outcome).isInstanceOf(RowOutcome.NotFound.class);
    return ((RowOutcome.NotFound) outcome).reason();
  }
}
