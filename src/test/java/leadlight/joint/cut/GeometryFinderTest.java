package leadlight.joint.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import leadlight.joint.place.DrawnJoints;
import leadlight.model.row.RowSpec;
import leadlight.vision.Frame;
import org.junit.jupiter.api.Test;

class GeometryFinderTest {

  /** A pixel of the drawing is 0.02 pitch; edges lie on pixel borders. */
  private static final double A_PIXEL = 1.0 / DrawnJoints.PITCH;

  @Test
  void widthsOfLeadsAndLandsComeFromTheRowItself() {
    try (Frame frame = new DrawnJoints().frame()) {
      RowGeometry found =
          new GeometryFinder(DrawnJoints.spec(), new DrawnJoints().patches(frame)).find();
      assertThat(found.leadHalf()).isCloseTo(DrawnJoints.LEAD_HALF, within(A_PIXEL));
      assertThat(found.landHalf()).isCloseTo(DrawnJoints.LAND_HALF, within(A_PIXEL));
    }
  }

  @Test
  void widthsThatTheUserStatesAreTakenAsStated() {
    RowSpec stated = RowSpec.plain(8, 0.5, OptionalDouble.of(0.18), OptionalDouble.of(0.26));
    try (Frame frame = new DrawnJoints().frame()) {
      RowGeometry found = new GeometryFinder(stated, new DrawnJoints().patches(frame)).find();
      assertThat(found.leadHalf()).isCloseTo(0.18, within(1e-9));
      assertThat(found.landHalf()).isCloseTo(0.26, within(1e-9));
    }
  }
}
