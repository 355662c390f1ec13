package leadlight;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import leadlight.cli.Main;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the guides tell a reader to do, done. */
class GuideTest {

  private static final String LAUNCHER = "./leadlight ";
  private static final String TEST_COMMAND = "mvn -B verify";

  @TempDir Path folder;

  @ParameterizedTest
  @MethodSource("scoreCommands")
  void a_score_command_of_the_readme_runs_and_leaves_its_picture(String command)
      throws IOException {
    List<String> arguments =
        new ArrayList<>(List.of(command.substring(LAUNCHER.length()).split(" +")));
    arguments.addAll(List.of("--out", folder.toString()));
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        Main.run(
            InputStream.nullInputStream(),
            new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            arguments.toArray(String[]::new));
    assertThat(status).as(err.toString(StandardCharsets.UTF_8)).isIn(0, 3, 4);
    try (Stream<Path> files = Files.list(folder)) {
      assertThat(files.map(Path::toString)).anyMatch(name -> name.endsWith(".annotated.png"));
    }
  }

  @Test
  void the_continuous_check_runs_the_test_command_of_the_readme() throws IOException {
    assertThat(commands("README.md")).contains(TEST_COMMAND);
    assertThat(Files.readString(Path.of(".ci/run"))).contains("\n" + TEST_COMMAND + " ");
  }

  @ParameterizedTest
  @MethodSource("samples")
  void each_sample_picture_has_its_truth_and_its_line(Path picture) throws IOException {
    String name = picture.getFileName().toString();
    Path truth = picture.resolveSibling(name.replace(".jpg", ".truth.json"));
    JsonNode tree = new JsonMapper().readTree(Files.readAllBytes(truth));
    assertThat(tree.path("photo").asText()).isEqualTo(name);
    assertThat(tree.path("joints")).hasSize(tree.path("leads").asInt());
    assertThat(Files.readString(picture.resolveSibling("README.md"))).contains("`" + name + "`");
  }

  static Stream<String> scoreCommands() throws IOException {
    return commands("README.md").stream().filter(line -> line.startsWith(LAUNCHER + "score "));
  }

  static List<Path> samples() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("sample-images"))) {
      return files.filter(file -> file.toString().endsWith(".jpg")).sorted().toList();
    }
  }

  /** The lines of a guide's code blocks. */
  private static List<String> commands(String guide) throws IOException {
    String[] pieces = Files.readString(Path.of(guide)).split("```", -1);
    List<String> lines = new ArrayList<>();
    for (int i = 1; i < pieces.length; i += 2) {
      lines.addAll(pieces[i].lines().map(String::strip).toList());
    }
    return lines;
  }
}
