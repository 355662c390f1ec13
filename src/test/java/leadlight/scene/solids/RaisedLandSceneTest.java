package leadlight.scene.solids;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.model.UserError;
import leadlight.scene.SceneFiles;
import leadlight.scene.plan.Bridge;
import leadlight.scene.plan.Condition;
import leadlight.scene.plan.JointPlan;
import leadlight.scene.plan.SceneSpec;
import leadlight.scene.render.Examples;
import leadlight.scene.render.SceneRenderer;
import leadlight.scene.render.Truth;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.TrueClass;
import leadlight.trial.truth.TruthFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Raised lands in scene files and in the truth. */
class RaisedLandSceneTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"0.03, limit", "0.05, defect", "0.15, defect"})
  void aWettedJointOnALandLiftedByMoreThanItsThicknessIsADefect(double raisedMm, String class2) {
    // A land is 0.035 mm thick; IPC-A-610 section 10, lifted lands, from memory.
    Truth.JointTruth truth = truth(Examples.joint().withLandRaised(raisedMm));
    assertThat(truth.condition()).isEqualTo("wetted");
    assertThat(truth.findings()).containsExactly("lifted-land");
    assertThat(truth.landRaisedMm()).isEqualTo(raisedMm);
    assertThat(truth.class2()).isEqualTo(class2);
  }

  @Test
  void anOpenLeadOnALiftedLandIsBoth() {
    JointPlan open = Examples.joint().with(Condition.OPEN, Examples.fill(3, 0));
    Truth.JointTruth truth = truth(open.withLandRaised(0.1));
    assertThat(truth.findings()).containsExactly("open", "lifted-land");
    assertThat(truth.class2()).isEqualTo("defect");
  }

  @Test
  void aTrialReadsTheTruthOfALiftedLand() {
    SceneFiles.write(SceneRenderer.render(raised(Examples.joint().withLandRaised(0.1))), folder);
    JointTruth read = TruthFolder.read(folder).get(0).truth().orElseThrow().joints().get(0);
    assertThat(read.class2()).isEqualTo(TrueClass.DEFECT);
    assertThat(read.findings()).containsExactly("lifted-land");
  }

  @Test
  void aSceneFileKeepsARaisedLand() {
    SceneSpec spec = raised(Examples.joint().withLandRaised(0.1));
    DataFile.write(folder.resolve("kept.json"), spec);
    SceneSpec read = SceneFiles.read(folder.resolve("kept.json"));
    assertThat(read.joints().get(0).landRaisedMm()).isEqualTo(0.1);
    assertThat(read.joints().get(1).landRaisedMm()).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "2.0, false, between 0.01 and 0.2",
    "-0.1, false, between 0.01 and 0.2",
    "0.1, true, torn land is gone",
  })
  void aSceneFileThatRaisesALandByNonsenseIsRefusedInOneLine(
      double raisedMm, boolean torn, String why) throws IOException {
    DataFile.write(folder.resolve("scene.json"), raised(Examples.joint().withLandRaised(0.11)));
    String changed =
        Files.readString(folder.resolve("scene.json"))
            .replaceFirst("\"torn\": false", "\"torn\": " + torn)
            .replace("\"land_raised_mm\": 0.11", "\"land_raised_mm\": " + raisedMm);
    Path file = Files.writeString(folder.resolve("scene.json"), changed);
    assertThatThrownBy(() -> SceneFiles.read(file))
        .isInstanceOf(UserError.class)
        .hasMessageContaining(why)
        .message()
        .doesNotContain("\n");
  }

  @Test
  void aBridgeHoldsALandDown() {
    JointPlan lifted = Examples.joint().withLandRaised(0.1);
    List<Bridge> bridge = List.of(new Bridge(1, 0.1, 0.1, 0.2, 3));
    assertThatThrownBy(() -> Examples.with(Examples.sound(3), lifted, bridge))
        .hasMessageContaining("bridge 1");
  }

  private static SceneSpec raised(JointPlan first) {
    return Examples.with(Examples.sound(3), first, List.of());
  }

  private static Truth.JointTruth truth(JointPlan first) {
    return SceneRenderer.render(raised(first)).truth().joints().get(0);
  }
}
