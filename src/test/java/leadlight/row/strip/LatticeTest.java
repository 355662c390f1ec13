package leadlight.row.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.model.row.LandSpec;
import leadlight.model.row.RowSpec;
import leadlight.row.find.EvenRun;
import org.junit.jupiter.api.Test;

/** The Type-C 16 row: figures of the open footprint, 0.5 mm pitch with four wider outer lands. */
class LatticeTest {

  private static final RowSpec TYPE_C = typeC();

  @Test
  void theEvenRunOfAnUnevenRowIsItsMiddle() {
    assertThat(EvenRun.of(TYPE_C)).isEqualTo(new EvenRun(2, 8));
  }

  @Test
  void placesAreInPitchesFromTheFirstLand() {
    Lattice lattice = Lattice.of(TYPE_C);
    assertThat(lattice.u()[1]).isCloseTo(1.6, within(1e-9));
    assertThat(lattice.span()).isCloseTo(12.8, within(1e-9));
  }

  @Test
  void landsOfOneWidthAreOneKind() {
    assertThat(Lattice.of(TYPE_C).kinds()).containsExactly(0, 0, 1, 1, 1, 1, 1, 1, 1, 1, 0, 0);
  }

  private static RowSpec typeC() {
    double[] u = {0, 0.8, 1.45, 1.95, 2.45, 2.95, 3.45, 3.95, 4.45, 4.95, 5.6, 6.4};
    List<LandSpec> lands = new ArrayList<>();
    for (int i = 0; i < u.length; i++) {
      OptionalDouble width = OptionalDouble.of(i < 2 || i > 9 ? 0.6 : 0.3);
      lands.add(new LandSpec(i + 1, "A" + (i + 1), u[i], width, OptionalDouble.empty()));
    }
    return new RowSpec("type-c-16", lands, 0.5, OptionalDouble.empty(), false);
  }
}
