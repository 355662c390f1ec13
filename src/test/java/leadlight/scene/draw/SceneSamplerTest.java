package leadlight.scene.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import leadlight.connector.ConnectorLibrary;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.model.row.LandSpec;
import leadlight.scene.chance.Dice;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Examples;
import leadlight.scene.render.Scene;
import leadlight.scene.render.SceneRenderer;
import leadlight.scene.render.Truth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SceneSamplerTest {

  private static final Path RANGE = Path.of("models/scene/mix-range.json");

  @TempDir private Path folder;

  private SceneMix uneven() throws IOException {
    String mix =
        Files.readString(RANGE)
            .replaceFirst("\"none\": 12,\\s*\"usb-c-16\": 2", "\"usb-c-16\": 1e9");
    return SceneMix.read(Files.writeString(folder.resolve("mix.json"), mix));
  }

  @Test
  void aNegativeWeightIsRefusedByItsPlace() throws IOException {
    String mix = Files.readString(RANGE).replaceFirst("\"pit\": 0.3", "\"pit\": -0.3");
    Path file = Files.writeString(folder.resolve("mix.json"), mix);
    assertThatThrownBy(() -> SceneMix.read(file))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("weights of a mix are 0 or more")
        .hasMessageContaining("-0.3");
  }

  @Test
  void aConnectorsRowHasItsLandsAndItsPinOneOnTheRight() throws IOException {
    Scene scene = SceneRenderer.render(new SceneSampler(uneven(), 4).draw(0));
    List<LandSpec> lands =
        ConnectorLibrary.builtIn().find("usb-c-16").rowSpec(0, OptionalInt.empty()).lands();

    Truth truth = scene.truth();

    assertThat(truth.connector()).isEqualTo("usb-c-16");
    assertThat(truth.landsAtMm()).isEqualTo(lands.stream().map(LandSpec::uMm).toList());
    double[] first = truth.joints().get(0).landToePx();
    double[] last = truth.joints().get(11).landToePx();
    double[] body = truth.towardsBodyPx();
    double side = (last[0] - first[0]) * body[1] - (last[1] - first[1]) * body[0];
    assertThat(side).as("held with the body above, pin 1 lies to the right").isPositive();
  }

  @Test
  void aBridgeOfARowCountedFromTheRightNamesItsPins() throws IOException {
    SceneSpec drawn = new SceneSampler(uneven(), 4).draw(0);
    SceneSpec bridged =
        Examples.with(drawn, Examples.joint(), List.of(new Bridge(1, 0.1, 0.1, 0.2, 3)));
    List<Truth.JointTruth> joints = SceneRenderer.render(bridged).truth().joints();
    assertThat(joints.get(11).pin()).isEqualTo(12);
    assertThat(joints.get(11).bridgeTo()).isEqualTo(11);
    assertThat(joints.get(10).bridgeTo()).isEqualTo(12);
  }

  @Test
  void aRangeOfFourHasMostDrawsInItsMiddle() {
    Dice dice = new Dice(5);
    double[] range = {10, 15, 80, 120};
    double[] draws = IntStream.range(0, 4000).mapToDouble(k -> dice.scale(range)).toArray();
    long below = IntStream.range(0, 4000).filter(k -> draws[k] < 15).count();
    long above = IntStream.range(0, 4000).filter(k -> draws[k] > 80).count();
    assertThat(below / 4000.0).isCloseTo(0.12, within(0.02));
    assertThat(above / 4000.0).isCloseTo(0.12, within(0.02));
    assertThat(Arrays.stream(draws).allMatch(d -> d >= 10 && d <= 120)).isTrue();
  }

  @Test
  void theRangeMixHasAFifthToAThirdOfFaultyJoints() {
    SceneSampler set = new SceneSampler(SceneMix.read(RANGE), 8);
    int joints = 0;
    int faulty = 0;
    for (int k = 0; k < 400; k++) {
      SceneSpec spec = set.draw(k);
      joints += spec.joints().size();
      faulty += 2 * spec.bridges().size();
      for (JointPlan joint : spec.joints()) {
        faulty += joint.condition() == Condition.WETTED ? 0 : 1;
      }
    }
    assertThat(faulty / (double) joints).isBetween(0.2, 0.33);
  }

  @Test
  void aThirdOfTheBenchMixesRowsHaveOneFaultThroughout() {
    SceneSampler set = new SceneSampler(SceneMix.read(Path.of("models/scene/mix-bench.json")), 8);
    int whole = 0;
    int leadless = 0;
    int bodyless = 0;
    int uneven = 0;
    for (int k = 0; k < 400; k++) {
      SceneSpec spec = set.draw(k);
      boolean sound = spec.joints().stream().anyMatch(j -> j.condition() == Condition.WETTED);
      boolean missing = spec.joints().stream().allMatch(j -> j.condition() == Condition.MISSING);
      whole += sound ? 0 : 1;
      leadless += missing ? 1 : 0;
      bodyless += spec.body().there() ? 0 : 1;
      uneven += spec.metal().uneven() == null ? 0 : 1;
    }
    assertThat(whole / 400.0).isBetween(0.26, 0.42);
    assertThat(leadless / (double) whole).isBetween(0.08, 0.27);
    assertThat(bodyless).isPositive().isLessThan(leadless);
    assertThat(uneven / 400.0).isBetween(0.4, 0.6);
  }

  @Test
  void noBodyLeavesTheBoardInView() {
    SceneSpec drawn = Examples.sound(4);
    JointPlan gone = Examples.joint().with(Condition.MISSING, Examples.fill(2, 0));
    SceneSpec bare = Examples.with(drawn, gone, List.of());
    SceneSpec bodyless =
        new SceneSpec(
            bare.name(),
            bare.seed(),
            bare.part(),
            bare.body().absent(),
            bare.board(),
            bare.metal(),
            bare.lamps(),
            bare.camera(),
            bare.joints(),
            bare.bridges(),
            bare.dirt());
    int above = SceneRenderer.render(bodyless).picture().getRGB(120, 6);
    int plastic = SceneRenderer.render(bare).picture().getRGB(120, 6);
    assertThat(above >> 8 & 0xff).as("green mask").isGreaterThan((plastic >> 8 & 0xff) + 20);
  }

  @Test
  void aDrawDependsOnItsNumberAlone() throws IOException {
    SceneSpec alone = new SceneSampler(SceneMix.read(RANGE), 3).draw(7);
    SceneSampler set = new SceneSampler(SceneMix.read(RANGE), 3);
    set.draw(2);
    SceneSpec after = set.draw(7);
    DataFile.write(folder.resolve("a.json"), alone);
    DataFile.write(folder.resolve("b.json"), after);
    assertThat(folder.resolve("a.json")).hasSameTextualContentAs(folder.resolve("b.json"));
  }

  @Test
  void aMixWithoutAChoiceIsRefusedInOneLine() throws IOException {
    String mix =
        Files.readString(RANGE).replaceFirst("\"body_side\": \\{[^}]*}", "\"body_side\": {}");
    Path file = Files.writeString(folder.resolve("mix.json"), mix);
    assertThatThrownBy(() -> SceneMix.read(file))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("body_side")
        .message()
        .doesNotContain("\n");
  }
}
