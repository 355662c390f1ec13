package leadlight.cli.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.cli.Run;
import leadlight.record.JobRecord;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pictures in {@code nudge} are of the path-traced set; their truth is stated beside them. */
class NudgeCommandTest {

  private static final Path PICTURES = Path.of("src/test/resources/nudge");

  @TempDir private Path folder;

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Run nudge(String... photos) {
    Object[] args = new Object[photos.length + 7];
    args[0] = "nudge";
    for (int i = 0; i < photos.length; i++) {
      args[i + 1] = PICTURES.resolve(photos[i]);
    }
    Object[] more = {"--leads", 12, "--pitch", 0.5, "--out", folder};
    System.arraycopy(more, 0, args, photos.length + 1, more.length);
    return Run.of(args);
  }

  private JsonNode json() throws IOException {
    return new ObjectMapper().readTree(folder.resolve("nudge-007-a.nudge.json").toFile());
  }

  @Test
  void aLooseLeadMovesAndIsOpenWhateverThePhotoLookedLike() throws IOException {
    Run run = nudge("nudge-007-a.jpg", "nudge-007-i.jpg");
    assertThat(run.status()).isEqualTo(3);
    JsonNode lead = json().path("joints").path(3);
    assertThat(lead.path("motion").asText()).isEqualTo("moves");
    double um = lead.path("shift_um").path("value").asDouble();
    assertThat(Math.abs(um - 92.9)).isLessThan(2 * lead.path("shift_um").path("u").asDouble());
    JsonNode joint =
        new ObjectMapper()
            .readTree(folder.resolve("nudge-007-a.json").toFile())
            .path("joints")
            .path(3);
    assertThat(joint.path("verdict").asText()).isEqualTo("defect");
    assertThat(joint.path("findings").path(0).path("kind").asText()).isEqualTo("open");
    assertThat(Files.size(folder.resolve("nudge-007-a.nudge.png"))).isGreaterThan(10_000);
  }

  @Test
  void aSolderedLeadIsFirmAndTheOthersAreStillToPush() throws IOException {
    Run run = nudge("nudge-007-a.jpg", "nudge-007-c.jpg");
    // The photo at rest shows a defect at another pin: one firm lead does not make the row good.
    assertThat(run.status()).isEqualTo(3);
    assertThat(json().path("photos").path(0).path("touched_pin").asInt()).isEqualTo(12);
    assertThat(json().path("joints").path(11).path("motion").asText()).isEqualTo("firm");
    assertThat(json().path("still_to_push")).hasSize(11);
  }

  @Test
  void whatGoesIntoTheRecordStaysProvenAndPrintsNothingIntoTheJson() throws IOException {
    Path photo = PICTURES.resolve("nudge-007-a.jpg");
    Path record = folder.resolve("record");
    List<Object> words = new ArrayList<>(List.of("nudge", photo));
    words.add(PICTURES.resolve("nudge-007-c.jpg"));
    words.addAll(List.of("--leads", 12, "--pitch", 0.5, "--out", folder, "--json"));
    words.addAll(List.of("--job", "0412", "--by", "Ada", "--record", record));
    Run run = Run.of(words.toArray());
    assertThat(new ObjectMapper().readTree(run.out()).path("joints")).hasSize(12);
    assertThat(folder.resolve("2/nudge-007-a.nudge.json")).exists();
    try (JobRecord open = JobRecord.open(record)) {
      assertThat(open.troubles()).isEmpty();
    }
  }

  @Test
  void aPhotoWithoutAPickSaysNothing() throws IOException {
    nudge("nudge-007-a.jpg", "nudge-007-a.jpg");
    assertThat(json().path("photos").path(0).path("touched_pin").isNull()).isTrue();
    assertThat(json().path("photos").path(0).path("reason").path("code").asText())
        .isEqualTo("no-pick");
  }

  @Test
  void anotherBoardIsRefused() throws IOException {
    nudge("nudge-007-a.jpg", "nudge-003-b.jpg");
    assertThat(json().path("photos").path(0).path("reason").path("code").asText())
        .isEqualTo("other-row");
  }

  @Test
  void oneSetOfTheBenchmarkIsCountedAsItsTruthSays() {
    Path benchmark = Path.of("../shared/benchmark/nudge");
    assumeThat(benchmark).isDirectory();
    Run run = Run.of("trial", "--sets", "nudge", benchmark);
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("| all | 80 | 78/80").doesNotContain("WRONG");
  }
}
