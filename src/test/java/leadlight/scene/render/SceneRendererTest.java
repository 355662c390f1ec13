package leadlight.scene.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.scene.SceneFiles;
import leadlight.scene.draw.SceneSampler;
import leadlight.scene.plan.Dirt;
import leadlight.scene.plan.DirtKind;
import leadlight.scene.plan.LampSpec;
import leadlight.scene.plan.SceneSpec;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SceneRendererTest {

  @Test
  void theSameSceneHasTheSameBytesOnAnyNumberOfThreads() {
    SceneSpec spec = Examples.sound(4);
    byte[] once = SceneFiles.jpeg(SceneRenderer.render(spec).picture(), 0.9);
    List<byte[]> again =
        IntStream.range(0, 3)
            .parallel()
            .mapToObj(k -> SceneFiles.jpeg(SceneRenderer.render(spec).picture(), 0.9))
            .toList();
    assertThat(again).allSatisfy(bytes -> assertThat(bytes).isEqualTo(once));
  }

  @Test
  void aSceneFileSaysEverything(@TempDir Path folder) throws IOException {
    SceneSpec drawn = new SceneSampler(Examples.MIX, 3).draw(11);
    Scene scene = SceneRenderer.render(drawn);
    SceneFiles.write(scene, folder);
    String name = drawn.name();
    byte[] first = Files.readAllBytes(folder.resolve(name + ".jpg"));
    Scene again = SceneRenderer.render(SceneFiles.read(folder.resolve(name + ".scene.json")));
    SceneFiles.write(again, Files.createDirectory(folder.resolve("again")));
    assertThat(Files.readAllBytes(folder.resolve("again").resolve(name + ".jpg"))).isEqualTo(first);
  }

  @Test
  void aSamplesSceneFileGivesItsTruthAgain(@TempDir Path folder) {
    Path samples = Path.of("sample-images");
    SceneSpec spec = SceneFiles.read(samples.resolve("logger-memory-starved.scene.json"));
    SceneFiles.write(SceneRenderer.render(spec), folder);
    assertThat(folder.resolve("logger-memory-starved.truth.json"))
        .hasSameTextualContentAs(samples.resolve("logger-memory-starved.truth.json"));
  }

  @Test
  void aLeadsSidesLieWhereTheTruthPutsThem() {
    Scene scene = SceneRenderer.render(Examples.sound(4));
    double[][] foot = scene.truth().joints().get(1).footPx();
    int y = (int) Math.round((foot[0][1] + foot[3][1]) / 2);
    double t = (y - foot[0][1]) / (foot[3][1] - foot[0][1]);
    double left = foot[0][0] + t * (foot[3][0] - foot[0][0]);
    double right = foot[1][0] + t * (foot[2][0] - foot[1][0]);
    assertThat(edge(scene, y, left)).isCloseTo(left, within(0.35));
    assertThat(edge(scene, y, right)).isCloseTo(right, within(0.35));
  }

  /** Centroid of the steps in brightness near a place. */
  private static double edge(Scene scene, int y, double near) {
    double sum = 0;
    double weight = 0;
    int x0 = (int) Math.round(near);
    for (int x = x0 - 2; x < x0 + 2; x++) {
      double step = Math.abs(green(scene, x + 1, y) - green(scene, x, y));
      sum += step * (x + 0.5);
      weight += step;
    }
    return sum / weight;
  }

  private static double green(Scene scene, int x, int y) {
    return scene.picture().getRGB(x, y) >> 8 & 255;
  }

  @Test
  void aPoolOfFluxUnderACoaxialLampGlaresInTheGapAndIsNoBridge() {
    SceneSpec dry = underCoaxial(Examples.sound(4));
    SceneSpec wet = Examples.withDirt(dry, List.of(new Dirt(DirtKind.POOL, 0.75, 0.1, 0.2, 1)));

    Scene with = SceneRenderer.render(wet);

    int gap = 120; // the middle between the second and the third of four lands
    int row = 80 + 30; // half a millimetre further from the body than the picture's middle: v = 0.1
    assertThat(green(with, gap, row))
        .isGreaterThan(green(SceneRenderer.render(dry), gap, row) + 25);
    assertThat(with.truth().joints()).allMatch(joint -> joint.bridgeTo() == null);
    assertThat(with.truth().fluxResidue()).isTrue();
  }

  private static SceneSpec underCoaxial(SceneSpec s) {
    return new SceneSpec(
        s.name(),
        s.seed(),
        s.part(),
        s.body(),
        s.board(),
        s.metal(),
        List.of(new LampSpec(LampSpec.Kind.COAXIAL, 90, 8, 0, 0, 1, 1, 1, 1)),
        s.camera(),
        s.joints(),
        s.bridges(),
        s.dirt());
  }
}
