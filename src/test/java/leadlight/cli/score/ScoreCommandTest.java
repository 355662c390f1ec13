package leadlight.cli.score;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import leadlight.cli.Run;
import leadlight.vision.Frame;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScoreCommandTest {

  private static final Path SAMPLES = Path.of("sample-images");
  private static final Path GOOD = SAMPLES.resolve("base-station-video-good.jpg");
  private static final Path BRIDGE = SAMPLES.resolve("logger-display-bridge.jpg");

  @TempDir private Path folder;

  @AfterEach
  void noPictureStaysInNativeMemory() {
    assertThat(Frame.live()).isZero();
  }

  private Run score(Path out, Object... more) {
    Object[] args =
        Stream.concat(
                Stream.of("score", "--leads", 19, "--pitch", 0.5, "--out", out), Stream.of(more))
            .toArray();
    return Run.of(args);
  }

  private static Map<String, byte[]> files(Path folder) throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> list = Files.list(folder)) {
      for (Path file : list.toList()) {
        files.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** In this picture the body lies below its leads; the help writes the sides in small letters. */
  @ParameterizedTest
  @ValueSource(strings = {"below", "BELOW"})
  void whereTheBodyLiesIsToldAsTheHelpWritesIt(String side) throws IOException {
    Run run = score(folder, "--body", side, GOOD);

    assertThat(run.status()).isZero();
    JsonNode report =
        new ObjectMapper().readTree(folder.resolve("base-station-video-good.json").toFile());
    assertThat(report.at("/settings/body_told").asText()).isEqualTo("below");
    assertThat(report.at("/joints")).hasSize(19);
  }

  /** Upside down the leads look like none; nothing is scored then. */
  @Test
  void whereTheBodyIsToldOnTheWrongSideNothingIsScored() {
    assertThat(score(folder, "--body", "above", GOOD).out()).contains("ROW NOT FOUND");
  }

  @Test
  void aPhotoGivesFourFiles() throws IOException {
    score(folder, GOOD);

    assertThat(files(folder))
        .containsOnlyKeys(
            "base-station-video-good.annotated.png",
            "base-station-video-good.csv",
            "base-station-video-good.html",
            "base-station-video-good.json");
    JsonNode report =
        new ObjectMapper().readTree(folder.resolve("base-station-video-good.json").toFile());
    assertThat(report.get("not_visible")).isNotEmpty();
    assertThat(report.get("cautions")).isNotEmpty();
  }

  /** Of these pictures the truth is known: all sound, and one open joint or bridge among sound. */
  @ParameterizedTest
  @ValueSource(strings = {"base-station-video-good", "logger-sensor-open", "logger-display-bridge"})
  void theStatusSaysWhetherTheTruthHoldsADefect(String sample) throws IOException {
    JsonNode truth = new ObjectMapper().readTree(SAMPLES.resolve(sample + ".truth.json").toFile());
    boolean defect = truth.findValuesAsText("class2").contains("defect");

    Run run =
        Run.of(
            "score",
            "--leads",
            truth.get("leads").asInt(),
            "--pitch",
            truth.get("pitch_mm").asDouble(),
            "--out",
            folder,
            SAMPLES.resolve(truth.get("photo").asText()));

    assertThat(run.status()).as(run.err()).isEqualTo(defect ? 3 : 0);
    JsonNode report = new ObjectMapper().readTree(folder.resolve(sample + ".json").toFile());
    assertThat(report.get("verdict").asText().equals("defect")).isEqualTo(defect);
  }

  @Test
  void jsonOnTheTerminalIsTheFileAndNothingElse() throws IOException {
    Run run = score(folder, GOOD, "--json");

    assertThat(run.out())
        .isEqualTo(Files.readString(folder.resolve("base-station-video-good.json")));
  }

  @Test
  void twoRunsAndAnyNumberOfThreadsGiveTheSameBytes() throws IOException {
    Path one = folder.resolve("one");
    Path two = folder.resolve("two");

    Run first = score(one, "--threads", 1, GOOD, BRIDGE);
    Run second = score(two, "--threads", 2, GOOD, BRIDGE);

    assertThat(second.status()).isEqualTo(first.status());
    assertThat(second.out()).isEqualTo(first.out().replace(one.toString(), two.toString()));
    Map<String, byte[]> expected = files(one);
    assertThat(expected).hasSize(8);
    assertThat(files(two)).containsOnlyKeys(expected.keySet());
    files(two).forEach((name, bytes) -> assertThat(bytes).as(name).isEqualTo(expected.get(name)));
  }

  @Test
  void sameNamedPhotosOfTwoFoldersBothSurvive() throws IOException {
    Path a = Files.createDirectory(folder.resolve("a")).resolve("row.jpg");
    Path b = Files.createDirectory(folder.resolve("b")).resolve("row.jpg");
    Files.copy(GOOD, a);
    Files.copy(BRIDGE, b);
    Path out = folder.resolve("out");

    score(out, a, b);
    score(out, a, b);

    assertThat(files(out))
        .as("and a second run replaces each photo's own results")
        .containsOnlyKeys(
            "row.annotated.png",
            "row.csv",
            "row.html",
            "row.json",
            "row-2.annotated.png",
            "row-2.csv",
            "row-2.html",
            "row-2.json");
    ObjectMapper json = new ObjectMapper();
    assertThat(List.of("row.json", "row-2.json"))
        .extracting(name -> json.readTree(out.resolve(name).toFile()).at("/photo/sha256").asText())
        .doesNotHaveDuplicates()
        .allSatisfy(hash -> assertThat(hash).hasSize(64));
  }

  @Test
  void aPhotoOfSomethingElseIsNotScored() throws IOException {
    Path other = Path.of("src/test/resources/photo/base.png");

    Run run = score(folder, other);

    assertThat(run.status()).isEqualTo(4);
    assertThat(run.out()).contains("ROW NOT FOUND");
    JsonNode report = new ObjectMapper().readTree(folder.resolve("base.json").toFile());
    assertThat(report.at("/row/found").asBoolean()).isFalse();
    assertThat(report.at("/row/reason").asText()).isNotBlank();
    assertThat(report.get("joints")).isEmpty();
  }
}
