package leadlight.page.look;

import static org.assertj.core.api.Assertions.assertThat;

import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.Unit;
import leadlight.model.joint.LimitCheck;
import leadlight.page.ScoredRow;
import leadlight.text.LengthUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BarTest {

  private static Bar bar(double mm, double u, double limitMm) {
    return Bar.of(
        new LimitCheck(
            Measure.SIDE_OVERHANG, new Quantity(mm, u, Unit.MM), limitMm, true, 0.99, "clause"),
        ScoredRow.context("en", LengthUnit.MM));
  }

  @ParameterizedTest
  @CsvSource({"-0.05, 0.01, 0.1", "-0.05, 0.04, 0.1", "-0.05, 0.01, 0", "0.3, 0.02, 0.1"})
  void theDoubtIsDrawnOnTheBarWhereverTheValueLies(double mm, double u, double limitMm) {
    Bar bar = bar(mm, u, limitMm);

    assertThat(bar.fromUnits()).isBetween(0.0, bar.toUnits());
    assertThat(bar.toUnits()).isLessThanOrEqualTo(Bar.WIDTH);
    assertThat(bar.valueUnits()).isLessThanOrEqualTo(Bar.WIDTH);
  }

  @Test
  void aLeadInsideItsLandIsReadOutWithItsWholeDoubt() {
    assertThat(bar(-0.05, 0.01, 0.1).label()).contains("\u22120.050", "\u22120.070", "\u22120.030");
    assertThat(bar(0.01, 0.01, 0.1).label()).doesNotContain("\u2212");
  }
}
