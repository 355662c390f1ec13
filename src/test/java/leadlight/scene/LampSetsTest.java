package leadlight.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import leadlight.scene.draw.SceneMix;
import leadlight.scene.plan.SceneSpec;
import org.junit.jupiter.api.Test;

class LampSetsTest {

  private final LampSets sets =
      new LampSets(SceneMix.read(Path.of("models/scene/mix-lamps.json")), 5);

  @Test
  void oneRowIsPhotographedThreeTimesUnderLampsOfItsOwn() {
    List<SceneSpec> shots = sets.set(3);
    assertThat(shots).extracting(SceneSpec::name).allMatch(name -> name.startsWith("lamps-00003-"));
    assertThat(shots).extracting(SceneSpec::joints).containsOnly(shots.get(0).joints());
    assertThat(shots).extracting(SceneSpec::board).containsOnly(shots.get(0).board());
    assertThat(shots).extracting(SceneSpec::lamps).doesNotHaveDuplicates();
    assertThat(shots).extracting(SceneSpec::camera).doesNotHaveDuplicates();
  }

  @Test
  void theSameSeedAndNumberGiveTheSameSet() {
    assertThat(sets.set(4))
        .extracting(SceneSpec::lamps)
        .isEqualTo(sets.set(4).stream().map(SceneSpec::lamps).toList());
  }
}
