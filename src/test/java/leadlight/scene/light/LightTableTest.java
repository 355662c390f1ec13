package leadlight.scene.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.scene.camera.Projection;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.render.Examples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The mirror rule: a facet tilted by t sends towards the lens the light that comes from 2t off the
 * view (law of reflection; Hecht, Optics, section 4.3), so a ring at elevation e lights facets
 * tilted by (90 - e) / 2.
 */
class LightTableTest {

  private static final double[] VIEW = {0, 0, 1};

  @ParameterizedTest
  @ValueSource(doubles = {30, 45, 60, 70})
  void aRingLightsTheFacetsOfTheMirrorRule(double elevationDeg) {
    LightTable table = new LightTable(light(LampSpec.Kind.RING, elevationDeg, 3), VIEW, 0.08);
    assertThat(brightestTilt(table)).isCloseTo((90 - elevationDeg) / 2, within(2.5));
  }

  @Test
  void aCoaxialLampLightsLevelFacets() {
    LightTable table = new LightTable(light(LampSpec.Kind.COAXIAL, 90, 8), VIEW, 0.08);
    assertThat(brightestTilt(table)).isLessThan(2.5);
  }

  @Test
  void aDomeLightsEveryTiltToHalfARightAngleAlike() {
    LightTable table = new LightTable(light(LampSpec.Kind.DOME, 0, 0), VIEW, 0.2);
    double most = 0;
    double least = 1e9;
    for (int tilt = 8; tilt <= 30; tilt += 2) {
      double level = level(table, tilt);
      most = Math.max(most, level);
      least = Math.min(least, level);
    }
    assertThat(most / least).isLessThan(1.35);
  }

  @Test
  void aMatteLevelSurfaceSendsItsShareOverPi() {
    LightTable table = new LightTable(light(LampSpec.Kind.RING, 45, 6), VIEW, 0);
    assertThat(level(table, 0)).isCloseTo(1 / Math.PI, within(1e-3));
  }

  private static Light light(LampSpec.Kind kind, double elevationDeg, double spreadDeg) {
    LampSpec lamp = new LampSpec(kind, elevationDeg, spreadDeg, 0, 0, 1, 1, 1, 1);
    return new Light(List.of(lamp), new Projection(Examples.camera(0, 0, 0, 0)));
  }

  private static double brightestTilt(LightTable table) {
    double best = 0;
    for (double tilt = 0; tilt < 45; tilt += 0.25) {
      if (level(table, tilt) > level(table, best)) {
        best = tilt;
      }
    }
    return best;
  }

  private static double level(LightTable table, double tiltDeg) {
    double[] rgb = new double[3];
    double t = Math.toRadians(tiltDeg);
    table.look(Math.sin(t), 0, Math.cos(t), null, rgb);
    return rgb[1];
  }
}
