package leadlight.enrol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.enrol.learn.Enrolment;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchFolderTest {

  @TempDir private Path benches;

  private Path written() {
    return new BenchFolder(benches, "ring").write(Mock.twoOfEach().enrolment());
  }

  @Test
  void whatIsWrittenIsReadBack() {
    Path file = written();
    Enrolment back = BenchFolder.find(benches, "ring");
    assertThat(back).usingRecursiveComparison().isEqualTo(Mock.twoOfEach().enrolment());
    assertThat(BenchFolder.find(benches, file.toString()).bench()).isEqualTo("ring");
  }

  @Test
  void numbersBeyondReasonAreNoVersions() throws IOException {
    Path file = written();
    Files.copy(file, file.resolveSibling("99999999999.json"));
    assertThat(new BenchFolder(benches, "ring").versions()).containsExactly(1);
    assertThat(new BenchFolder(benches, "ring").next()).isEqualTo(2);
  }

  @Test
  void aFileThatTellsOfAnotherVersionOrBenchIsRefusedAndCanBeTakenBack() throws IOException {
    Path file = written();
    Files.copy(file, file.resolveSibling("3.json"));
    BenchFolder ring = new BenchFolder(benches, "ring");
    assertThatThrownBy(ring::inUse)
        .isInstanceOf(UserError.class)
        .hasMessageContaining("3.json tells of bench ring, version 1");
    assertThat(ring.takeBack()).hasFileName("3.taken-back.json").exists();
    assertThat(file).as("the version before stays").exists();
    Files.createDirectories(benches.resolve("lamp"));
    Files.copy(file, benches.resolve("lamp/1.json"));
    assertThatThrownBy(() -> BenchFolder.find(benches, "lamp"))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("tells of bench ring");
  }

  @Test
  void aNameThatReadsAsAFileIsRefused() {
    for (String name : List.of("ring.json", "ring.JSON")) {
      assertThatThrownBy(() -> new BenchFolder(benches, name))
          .isInstanceOf(UserError.class)
          .hasMessageContaining("does not end in .json");
    }
  }

  @Test
  void aVersionThatIsNotThereSaysWhichAre() {
    BenchFolder ring = new BenchFolder(benches, "ring");
    assertThatThrownBy(() -> ring.version(1)).hasMessageContaining("no bench \"ring\"");
    written();
    assertThatThrownBy(() -> ring.version(7))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("no version 7; there is 1");
  }

  /** A lent file with one thing changed. */
  private void refused(String what, String changed, String why) throws IOException {
    String text = Files.readString(written());
    String other = text.replaceFirst(what, changed);
    assertThat(other).as(what).isNotEqualTo(text);
    Path lent = benches.resolve("lent.json");
    Files.write(lent, other.getBytes(StandardCharsets.UTF_8));
    assertThatThrownBy(() -> BenchFolder.find(benches, lent.toString()))
        .as(what)
        .isInstanceOf(UserError.class)
        .hasMessageContaining(why)
        .hasMessageContaining("lent.json")
        .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(1));
  }

  @Test
  void aLentFileThatDoesNotFitIsRefusedInOneLine() throws IOException {
    refused("enrolment/2", "enrolment/1", "schema must be");
    refused("\"sha256\": \"0", "\"sha256\": \"x", "sha256 has 64 digits");
    refused("\"sha256\": \"(0+)2\"", "\"sha256\": \"$11\"", "one is there twice");
    refused("\"pitch_px\": 40", "\"pitch_px\": 0", "setting of");
    refused("\"photo\": 0", "\"photo\": 9", "there is no such photo");
    refused("\"pin\": 2,", "\"pin\": 1,", "is there twice");
    refused("\"soldered\": true", "\"soldered\": false", "not what its photo was shown as");
    refused("\"features\": \\[[^,]*,", "\"features\": [", "has 239 numbers");
    refused("\"features\": \\[[^,]*,", "\"features\": [1e99,", "must be finite");
    refused("\"weights\": \\[[^,]*,", "\"weights\": [", "has 239 weights");
    refused("\"soldered_below\": [^,}]*", "\"unsoldered_above\": 1", "must be there");
    refused("(?s)\"lines\": \\[.*?\\],\\s*\"whole\"", "\"whole\"", "lines: needed for photos 0, 1");
    refused("(?s)\"whole\": \\{.*?\\},\\s*\"cloud\"", "\"cloud\"", "whole: there once");
    refused("\"spreads\": \\[[^,]*,", "\"spreads\": [0,", "cloud");
    refused("\"general\": true", "\"general\": 7", "general");
  }
}
