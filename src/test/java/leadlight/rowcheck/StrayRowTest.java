package leadlight.rowcheck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.model.BodySide;
import leadlight.model.Homography;
import leadlight.model.PointPx;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import org.junit.jupiter.api.Test;

class StrayRowTest {

  private static final int WAYS = 26;
  private static final double PITCH = 40;

  /** Ten leads along x, body above, 0.5 mm apart. */
  private static RowOutcome.Found row() {
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      double x = 100 + i * PITCH;
      leads.add(
          new Lead(
              i + 1,
              new PointPx(x, 200),
              new PointPx(x, 150),
              new PointPx(x, 220),
              new PointPx(x, 130),
              1,
              0.1,
              0.1));
    }
    return new RowOutcome.Found(
        new Homography(80, 0, 100, 0, 80, 220, 0, 0, 1),
        leads,
        PITCH,
        0,
        80,
        BodySide.ABOVE,
        1,
        0,
        List.of());
  }

  private static double offPitches(RowOutcome.Found stray) {
    return IntStream.range(0, 10)
        .mapToDouble(
            i -> stray.leads().get(i).toePx().distanceTo(row().leads().get(i).toePx()) / PITCH)
        .max()
        .orElseThrow();
  }

  @Test
  void everyWayLeadsAtLeastHalfAPitchAway() {
    for (int way = 0; way < WAYS; way++) {
      assertThat(offPitches(StrayRow.of(row(), way))).as("way %d", way).isBetween(0.49, 2.6);
    }
  }

  @Test
  void noTwoWaysAreTheSameAndTheyComeAgainInTurn() {
    List<PointPx> toes = new ArrayList<>();
    for (int way = 0; way < WAYS; way++) {
      toes.add(StrayRow.of(row(), way).leads().get(0).toePx());
    }
    assertThat(toes).doesNotHaveDuplicates();
    assertThat(StrayRow.of(row(), WAYS).leads()).isEqualTo(StrayRow.of(row(), 0).leads());
  }

  @Test
  void aTurnKeepsTheMiddleAndThePitch() {
    RowOutcome.Found turned = StrayRow.of(row(), 8);
    PointPx a = turned.leads().get(0).landToePx();
    PointPx b = turned.leads().get(9).landToePx();

    assertThat((a.x() + b.x()) / 2).isCloseTo(280, within(1e-9));
    assertThat((a.y() + b.y()) / 2).isCloseTo(220, within(1e-9));
    assertThat(a.distanceTo(b)).isCloseTo(9 * PITCH, within(1e-9));
    assertThat(Math.toDegrees(Math.atan2(b.y() - a.y(), b.x() - a.x())))
        .isCloseTo(-9, within(1e-9));
    assertThat(turned.mmToPx().map(0, 0).distanceTo(a)).isCloseTo(0, within(1e-9));
  }
}
