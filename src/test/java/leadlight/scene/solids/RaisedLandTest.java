package leadlight.scene.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import leadlight.model.PointPx;
import leadlight.scene.camera.Projection;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.light.Hit;
import leadlight.scene.light.Light;
import leadlight.scene.light.LightTable;
import leadlight.scene.light.Shader;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Examples;
import leadlight.scene.render.JointJudge;
import leadlight.scene.render.SceneRenderer;
import leadlight.scene.render.Tracer;
import leadlight.scene.render.Truth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A land of 1.5 mm, its heel at v = -1.1 mm and its toe end at 0.4 mm, raised about its heel: a
 * rigid plate on a hinge, so that its rise is the length times the sine of its tilt and its run the
 * length times the cosine (right triangle; NIST DLMF 4.14).
 */
class RaisedLandTest {

  private static final double LENGTH_MM = 1.5;
  private static final double HEEL_MM = -1.1;

  private final Hit hit = new Hit();

  @ParameterizedTest
  @ValueSource(doubles = {0.03, 0.08, 0.15})
  void aRaisedLandIsTiltedByTheArcSineOfItsRiseOverItsLength(double raisedMm) {
    Tracer tracer = tracer(with(bare().withLandRaised(raisedMm)));
    double sumV = 0;
    double sumZ = 0;
    for (int k = 0; k < 400; k++) {
      trace(tracer, -0.08 + 0.04 * (k % 5), -0.9 + 0.003 * k);
      sumV += hit.nv;
      sumZ += hit.nz;
    }
    double tilt = Math.atan2(-sumV, sumZ);
    assertThat(tilt)
        .as("grain averaged out")
        .isCloseTo(Math.asin(raisedMm / LENGTH_MM), within(3e-3));
  }

  @Test
  void itStandsHighestAtItsToeEndAndEndsWhereTheTurnedLengthEnds() {
    double raisedMm = 0.15;
    Tracer tracer = tracer(with(bare().withLandRaised(raisedMm)));
    double run = Math.sqrt(LENGTH_MM * LENGTH_MM - raisedMm * raisedMm);
    assertThat(trace(tracer, 0, HEEL_MM + run / 2).z).isCloseTo(raisedMm / 2, within(1e-9));
    assertThat(trace(tracer, 0, HEEL_MM + run - 1e-4).z).isCloseTo(raisedMm, within(1e-4));
    assertThat(trace(tracer, 0, HEEL_MM + run + 1e-4 + 0.1 * LiftFrame.FOIL_MM).z).isZero();
  }

  @ParameterizedTest
  @CsvSource({"0.0, 0.15", "0.14, 0.15", "-0.14, 0.08"})
  void tiltMovesItsToeEndByParallaxAsAPinholeCameraSeesIt(double tiltRad, double raisedMm) {
    // Hartley and Zisserman, Multiple View Geometry, 2nd ed., section 6.1, with the camera turned
    // about the picture's x axis: 80 px a millimetre from 100 mm, aimed at v = -0.5 mm.
    double along = HEEL_MM + Math.sqrt(LENGTH_MM * LENGTH_MM - raisedMm * raisedMm) + 0.5;
    double across = along * Math.cos(tiltRad) + raisedMm * Math.sin(tiltRad);
    double depth = 100 + along * Math.sin(tiltRad) - raisedMm * Math.cos(tiltRad);
    double seen = 199.5 + 8000 * across / depth;

    RowLayout row = new RowLayout(with(bare().withLandRaised(raisedMm)));
    Projection camera = new Projection(Examples.camera(0, tiltRad, 0, 0));
    double[] toe = truth(row, camera).landToePx();

    assertThat(toe[1]).isCloseTo(seen, within(1e-3));
    assertThat(surfaceAt(row, camera, new PointPx(toe[0], toe[1] - 0.05))).isEqualTo(Shader.LAND);
    assertThat(surfaceAt(row, camera, new PointPx(toe[0], toe[1] + 1))).isNotEqualTo(Shader.LAND);
  }

  @Test
  void theLeadsFootRidesOnItWhileTheLeadStaysInTheBody() {
    Tracer flat = tracer(with(Examples.joint()));
    Tracer raised = tracer(with(Examples.joint().withLandRaised(0.15)));
    double foot = trace(raised, 0, -0.1).z - trace(flat, 0, -0.1).z;
    assertThat(foot).isCloseTo(0.15 / LENGTH_MM * (-0.1 - HEEL_MM), within(0.002));
    double body = raised.heightAt(0, -1.29) - flat.heightAt(0, -1.29);
    assertThat(body).isCloseTo(0, within(0.01));
  }

  @Test
  void aCoaxialLampShinesBackFromALyingLandAndLessFromARaisedOne() {
    double level = middle(with(bare()));
    double tilted = middle(with(bare().withLandRaised(0.15)));
    assertThat(tilted).isLessThan(0.8 * level);
  }

  @Test
  void theBoardBelowARaisedLandIsDarkerTheDeeperItLies() {
    RowLayout row = new RowLayout(with(bare().withLandRaised(0.1)));
    RaisedLand land = new RaisedLand(row);
    // At the depth of the gap the edge is seen under 45 degrees.
    double depth = row.frame(0).gapAt(0.2);
    assertThat(land.lightBelow(0, 0.15 - depth, 0.2))
        .isCloseTo((1 - Math.sqrt(0.5)) / 2, within(1e-9));
    assertThat(land.lightBelow(0, 0, 0.2)).isBetween(0.0, 0.14);
    assertThat(land.lightBelow(0, 0.16, 0.2)).isEqualTo(1);
  }

  @Test
  void mixesWithoutTheFaultRaiseNoLandAndTheEdgeMixDoes() {
    assertThat(raisedIn("range")).isZero();
    assertThat(raisedIn("edge")).isPositive();
  }

  private static long raisedIn(String mix) {
    SceneSampler set =
        new SceneSampler(
            SceneMix.read(java.nio.file.Path.of("models/scene/mix-%s.json".formatted(mix))), 2);
    return java.util.stream.IntStream.range(0, 40)
        .boxed()
        .flatMap(k -> set.draw(k).joints().stream())
        .filter(joint -> joint.landRaisedMm() != null)
        .count();
  }

  /** A land without lead and solder. */
  private static JointPlan bare() {
    return Examples.joint().with(Condition.MISSING, new JointPlan.Fill(false, 0, 0, 0, 0));
  }

  private static SceneSpec with(JointPlan first) {
    return Examples.with(Examples.sound(3), first, List.of());
  }

  private static Tracer tracer(SceneSpec spec) {
    return tracer(new RowLayout(spec));
  }

  private static Tracer tracer(RowLayout row) {
    SolderField solder = new SolderField(row, 0.01);
    return new Tracer(row, solder, SceneRenderer.leads(row, solder), new BodyBox(row));
  }

  private Hit trace(Tracer tracer, double u, double v) {
    tracer.trace(new double[] {u, v, 0, 0}, hit, new Hit());
    return hit;
  }

  private static int surfaceAt(RowLayout row, Projection camera, PointPx place) {
    double[] ray = new double[4];
    camera.sight(place.x(), place.y(), ray);
    Hit met = new Hit();
    tracer(row).trace(ray, met, new Hit());
    return met.surface;
  }

  private static Truth.JointTruth truth(RowLayout row, Projection camera) {
    SolderField solder = new SolderField(row, 0.01);
    return JointJudge.truth(row, camera, SceneRenderer.leads(row, solder)[0], 0);
  }

  /** Light of the first land's middle under a coaxial lamp, the camera straight above. */
  private double middle(SceneSpec spec) {
    RowLayout row = new RowLayout(spec);
    Projection camera = new Projection(spec.camera());
    LampSpec lamp = new LampSpec(LampSpec.Kind.COAXIAL, 90, 4, 0, 0, 1, 1, 1, 1);
    Light light = new Light(List.of(lamp), camera);
    LightTable table = new LightTable(light, camera.toRow(0, 0, 1), spec.metal().landRoughness());
    Tracer tracer = tracer(row);
    double sum = 0;
    double[] rgb = new double[3];
    for (int k = 0; k < 200; k++) {
      trace(tracer, 0, -0.9 + 0.006 * k);
      table.look(hit.nu, hit.nv, hit.nz, null, rgb);
      sum += rgb[1];
    }
    return sum;
  }
}
