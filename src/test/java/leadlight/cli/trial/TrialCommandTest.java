package leadlight.cli.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import leadlight.cli.Run;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TrialCommandTest {

  private static final Path SAMPLE = Path.of("sample-images/logger-sensor-open");

  @TempDir private Path folder;

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Path oneSample() throws IOException {
    Path photos = Files.createDirectory(folder.resolve("photos"));
    JsonNode truth = new ObjectMapper().readTree(Path.of(SAMPLE + ".truth.json").toFile());
    Files.copy(Path.of(SAMPLE + ".truth.json"), photos.resolve("a.truth.json"));
    Files.copy(Path.of(SAMPLE + ".jpg"), photos.resolve(truth.get("photo").asText()));
    return photos;
  }

  @Test
  void truePositionsAreRightToTheDigit() throws IOException {
    Path csv = folder.resolve("m.csv");

    Run run =
        Run.of(
            "trial",
            oneSample(),
            "--truth-positions",
            "--json",
            "--measures",
            csv,
            "--out",
            folder.resolve("out"));

    assertThat(run.status()).as(run.err()).isZero();
    JsonNode report = new ObjectMapper().readTree(run.out());
    assertThat(report.at("/truth/rows/right/count").asInt()).isEqualTo(1);
    assertThat(report.at("/truth/positions/lateral_median_of_pitch").asDouble()).isZero();
    int leads = report.at("/truth/positions/leads").asInt();
    assertThat(Files.readAllLines(csv)).as("a header and a line a joint").hasSize(leads + 1);
    assertThat(folder.resolve("out/trial.json")).hasContent(run.out().strip());
  }

  @Test
  void everyJointHasItsLineWithConditionsAndUncertainty() throws IOException {
    Path csv = folder.resolve("joints.csv");

    Run run = Run.of("trial", oneSample(), "--joints", csv, "--out", folder.resolve("out"));

    assertThat(run.status()).as(run.err()).isZero();
    List<String> lines = Files.readAllLines(csv);
    List<String> header = List.of(lines.get(0).split(","));
    JsonNode truth =
        new ObjectMapper().readTree(Path.of(SAMPLE + ".truth.json").toFile()).get("joints");
    assertThat(lines).hasSize(truth.size() + 1);
    for (String line : lines.subList(1, lines.size())) {
      String[] fields = line.split(",", -1);
      assertThat(Double.parseDouble(fields[header.indexOf("u_along_row_px")])).isPositive();
      JsonNode joint = truth.get(Integer.parseInt(fields[header.indexOf("pin")]) - 1);
      assertThat(fields[header.indexOf("class2")]).isEqualTo(joint.get("class2").asText());
      assertThat(fields[header.indexOf("result")])
          .as(line)
          .isEqualTo(worth(joint.get("class2").asText(), fields[header.indexOf("verdict")]));
      if (joint.get("class2").asText().equals("defect")) {
        assertThat(fields[header.indexOf("result")]).as(line).isEqualTo("caught");
      }
    }
  }

  /** As docs/accuracy.md counts. */
  private static String worth(String truth, String verdict) {
    if (truth.equals("limit") || verdict.equals("unjudged")) {
      return truth.equals("limit") ? "not-counted" : "unjudged";
    }
    boolean called = verdict.equals("defect");
    return truth.equals("defect") ? called ? "caught" : "missed" : called ? "false-call" : "passed";
  }

  @Test
  void theFiguresDoNotDependOnTheThreads() throws IOException {
    Path photos = Path.of("sample-images");

    Run one = Run.of("trial", photos, "--threads", 1, "--out", folder.resolve("1"));
    Run two = Run.of("trial", photos, "--threads", 2, "--out", folder.resolve("2"));

    assertThat(one.out()).contains("rows right").isEqualTo(two.out());
    assertThat(folder.resolve("1/trial.json"))
        .hasSameBinaryContentAs(folder.resolve("2/trial.json"));
  }

  @Test
  void aFolderWithoutTruthIsOneLine() {
    Run run = Run.of("trial", folder);

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1);
  }
}
