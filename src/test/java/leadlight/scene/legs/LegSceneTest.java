package leadlight.scene.legs;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import leadlight.model.BoardSide;
import leadlight.scene.SceneFiles;
import leadlight.scene.camera.Projection;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LegSceneTest {

  @TempDir private Path folder;

  private static LegSceneSpec drawn(BoardSide side) {
    LegSampler sampler = new LegSampler(LegMix.read(Path.of("models/scene/mix-legs.json")), 5);
    for (int i = 0; i < 200; i++) {
      LegSceneSpec spec = sampler.draw(i);
      if (spec.side() == side && spec.legs().size() == 1 && spec.camera().widthPx() < 260) {
        return spec;
      }
    }
    throw new AssertionError("no small scene in 200");
  }

  /** The same scene with its leg soldered otherwise. */
  private static LegSceneSpec with(LegSceneSpec spec, LegPlan.Condition how, LegPlan.Fill solder) {
    LegPlan was = spec.legs().get(0);
    LegPlan plan =
        new LegPlan(
            was.number(), was.uMm(), was.vMm(), was.land(), was.hole(), was.leg(), how, solder);
    return new LegSceneSpec(
        spec.name(),
        spec.seed(),
        spec.side(),
        spec.connector(),
        spec.mask(),
        spec.finish(),
        spec.openingMm(),
        spec.metal(),
        spec.lamps(),
        spec.camera(),
        spec.shell(),
        List.of(plan),
        List.of());
  }

  private static LegSceneTruth.LegTruth truth(LegPlan.Condition how, LegPlan.Fill solder) {
    LegSceneSpec spec = with(drawn(BoardSide.SOLDER), how, solder);
    return LegSceneTruth.of(spec, new Projection(spec.camera()), new LegShell(spec)).legs().get(0);
  }

  @Test
  void theSameSpecGivesTheSamePictureAndItsFileAnotherSpecAnother() {
    LegSceneSpec spec = drawn(BoardSide.SOLDER);
    LegScene scene = LegRenderer.render(spec);
    SceneFiles.write(scene, folder);
    LegSceneSpec read = SceneFiles.readLegs(folder.resolve(spec.name() + ".legs.scene.json"));
    int[] pixels = pixels(scene.picture());
    assertThat(pixels(LegRenderer.render(read).picture())).isEqualTo(pixels);
    LegPlan.Fill none = new LegPlan.Fill(0, 0, 0, 0, 0, 0, 0, 0, 0);
    LegSceneSpec bare = with(spec, LegPlan.Condition.UNSOLDERED, none);
    assertThat(pixels(LegRenderer.render(bare).picture())).isNotEqualTo(pixels);
  }

  private static int[] pixels(BufferedImage of) {
    return of.getRGB(0, 0, of.getWidth(), of.getHeight(), null, 0, of.getWidth());
  }

  @Test
  void truthFollowsFromWhereSolderIs() {
    LegPlan.Fill whole = new LegPlan.Fill(0, 0, 1.5, 0, 0.2, 0, 0, 0, 0);
    LegSceneTruth.LegTruth filled = truth(LegPlan.Condition.FILLED, whole);
    assertThat(filled.wettedDeg()).isEqualTo(360);
    assertThat(filled.landCovered()).isEqualTo(1);
    assertThat(filled.holeOpen()).isZero();
    assertThat(filled.class2()).isEqualTo("acceptable");

    LegSceneTruth.LegTruth bare = truth(LegPlan.Condition.UNSOLDERED, whole);
    assertThat(bare.wettedDeg()).isZero();
    assertThat(bare.holeOpen()).isEqualTo(1);
    assertThat(bare.class2()).isEqualTo("defect");

    LegSceneTruth.LegTruth part =
        truth(LegPlan.Condition.PART_WETTED, new LegPlan.Fill(10, 120, 1.5, 0, 0.2, 0, 0, 0, 0));
    assertThat(part.wettedDeg()).isBetween(235.0, 245.0);
    assertThat(part.holeOpen()).isBetween(0.1, 0.6);

    LegSceneTruth.LegTruth capped =
        truth(LegPlan.Condition.CAPPED, new LegPlan.Fill(0, 0, 1.5, 0, 0.05, 0.3, 0.06, 0, 0));
    assertThat(capped.wettedDeg()).isZero();
    assertThat(capped.landCovered()).isGreaterThan(0.9);
    assertThat(capped.class2()).isEqualTo("defect");
  }

  @Test
  void theShellHidesPartOfTheLandsOfTheComponentSideAlone() {
    LegSceneSpec above = drawn(BoardSide.COMPONENT);
    LegSceneTruth seen =
        LegSceneTruth.of(above, new Projection(above.camera()), new LegShell(above));
    assertThat(seen.legs().get(0).hidden()).isBetween(0.05, 0.95);
    LegSceneSpec below = drawn(BoardSide.SOLDER);
    LegSceneTruth free =
        LegSceneTruth.of(below, new Projection(below.camera()), new LegShell(below));
    assertThat(free.legs().get(0).hidden()).isZero();
  }
}
