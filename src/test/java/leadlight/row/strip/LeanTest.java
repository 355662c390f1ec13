package leadlight.row.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import leadlight.model.Homography;
import leadlight.model.row.RowSpec;
import leadlight.row.DrawnRow;
import leadlight.row.find.RowFit;
import leadlight.vision.Frame;
import leadlight.vision.Pyramid;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LeanTest {

  private static final double PITCH_PX = 30;
  private static final Zone FEET = new Zone(-0.4, 0.6, 1);

  /** A strip that is sheared against a row drawn at right angles. */
  private static Lean seen(double shear) {
    Lattice lattice =
        Lattice.of(RowSpec.plain(12, 0.5, OptionalDouble.empty(), OptionalDouble.empty()));
    DrawnRow row = new DrawnRow(12, PITCH_PX, 0);
    try (Frame frame = row.draw(600, 400);
        Pyramid photo = new Pyramid(frame)) {
      double x = row.toe(1).x();
      double y = row.toe(1).y();
      Homography map =
          new Homography(PITCH_PX, -shear * PITCH_PX, x, 0, PITCH_PX, y - 0.5 * PITCH_PX, 0, 0, 1);
      Strip strip = Strip.of(photo, map, -2, lattice.span() + 2, -2, 2, RowFit.PER_PITCH);
      return Lean.of(new Waves(strip, lattice), FEET);
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, 0, 0.1})
  void leadsThatAgreeTellTheirLean(double shear) {
    assertThat(seen(shear).mean()).isCloseTo(shear, within(0.02));
  }

  @Test
  void theLessSureTheLessItIsBelieved() {
    assertThat(new Lean(0.2, 0).trust(0.04)).isEqualTo(1);
    assertThat(new Lean(0.2, 0.04).trust(0.04)).isEqualTo(0.5);
    assertThat(new Lean(0.2, Double.POSITIVE_INFINITY).trust(0.04)).isZero();
  }
}
