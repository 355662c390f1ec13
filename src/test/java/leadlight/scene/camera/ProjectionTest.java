package leadlight.scene.camera;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import leadlight.model.PointPx;
import leadlight.scene.render.Examples;
import org.junit.jupiter.api.Test;

/**
 * Against the pinhole model of Hartley and Zisserman, Multiple View Geometry, 2nd ed., chapter 6.
 */
class ProjectionTest {

  @Test
  void seenSquarelyAPointLiesWhereSimilarTrianglesPutIt() {
    Projection camera = new Projection(Examples.camera(0, 0, 0, 0));
    PointPx p = camera.map(3 + 1.5, -0.5 + 0.4, 2);
    double scale = 80 * 100 / (100.0 - 2);
    assertThat(p.x()).isCloseTo(499.5 + 1.5 * scale, within(1e-9));
    assertThat(p.y()).isCloseTo(199.5 + 0.4 * scale, within(1e-9));
  }

  @Test
  void tiltAboutXMovesDepthIntoThePicture() {
    double tilt = 0.2;
    Projection camera = new Projection(Examples.camera(0, tilt, 0, 0));
    PointPx p = camera.map(3, -0.5 + 1, 0);
    double depth = 100 + Math.sin(tilt);
    assertThat(p.y()).isCloseTo(199.5 + 8000 * Math.cos(tilt) / depth, within(1e-9));
  }

  @Test
  void theCrossRatioOfFourPointsOnALineIsKept() {
    Projection camera = new Projection(Examples.camera(0.3, 0.15, -0.2, 0));
    double[] s = {0, 1, 2.5, 6};
    double[] t = new double[4];
    PointPx first = camera.map(0, 0, 0);
    for (int k = 0; k < 4; k++) {
      t[k] = camera.map(s[k], 0.3 * s[k], 0).distanceTo(first);
    }
    assertThat(crossRatio(t)).isCloseTo(crossRatio(s), within(1e-9));
  }

  @Test
  void theLineOfSightLeadsBackToThePoint() {
    Projection camera = new Projection(Examples.camera(1.6, 0.1, -0.15, 0.02));
    double[] ray = new double[4];
    for (double z : new double[] {0, 0.15, 2}) {
      PointPx p = camera.map(5, 0.7, z);
      camera.sight(p.x(), p.y(), ray);
      assertThat(ray[0] + z * ray[2]).isCloseTo(5, within(1e-6));
      assertThat(ray[1] + z * ray[3]).isCloseTo(0.7, within(1e-6));
    }
  }

  private static double crossRatio(double[] s) {
    return (s[2] - s[0]) * (s[3] - s[1]) / ((s[2] - s[1]) * (s[3] - s[0]));
  }
}
