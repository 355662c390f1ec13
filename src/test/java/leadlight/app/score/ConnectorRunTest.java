package leadlight.app.score;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.cli.Run;
import leadlight.data.DataFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConnectorRunTest {

  private static final Path ROW = Path.of("sample-images/base-station-video-good.jpg");
  private static final Path LEGS = Path.of("src/test/resources/leadlight/leg/legs-010.jpg");
  private static final String PART = "video-a-19-holes";

  @TempDir private Path folder;

  @Test
  void rowAndLegsGetOneAnswer() throws IOException {
    Run run =
        Run.of("score", ROW, "--connector", PART, "--legs", LEGS, "--out", folder, "--threads", 1);

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).contains("DEFECT", "anchor legs: 2 defects", "leg 1  defect");
    String name = "base-station-video-good.connector";
    String json = Files.readString(folder.resolve(name + ".json"));
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(DataFile.builtIn("schema/report.schema.json").text());
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    JsonNode report = new ObjectMapper().readTree(json);
    assertThat(report.get("verdict").asText()).isEqualTo("defect");
    assertThat(report.at("/legs/each")).hasSize(4);
    assertThat(report.get("joints")).hasSize(19);
    assertThat(Files.readAllLines(folder.resolve(name + ".csv"))).hasSize(1 + 19 + 4);
    assertThat(folder.resolve(name + ".annotated.png")).isNotEmptyFile();
    assertThat(Files.readString(folder.resolve(name + ".html")))
        .contains(
            "To touch up: 0 of 19 joints, 2 of 4 legs",
            "19 sound",
            "legs: 2 defects",
            "Large tip: the anchor legs first",
            "from the solder side: Leg 1, Leg 2.",
            "was shown right on rendered pictures alone")
        .doesNotContain("No joint needs the iron");
  }

  @Test
  void whatDoesNotFitIsSaidInOneLine() {
    assertThat(Run.of("score", ROW, ROW, "--connector", PART, "--legs", LEGS).errLines())
        .containsExactly("leadlight: --legs goes with the photo of one row; 2 are named");
    assertThat(Run.of("score", ROW, "--leads", 19, "--pitch", 0.5, "--legs", LEGS).errLines())
        .containsExactly(
            "leadlight: --legs needs a connector whose legs are known: name it by --connector");
    assertThat(Run.of("score", LEGS, "--connector", PART, "--legs", LEGS).err())
        .contains("legs-010.jpg is named twice");
    assertThat(Run.of("score", ROW, "--connector", PART, "--legs", LEGS, "--same-row").errLines())
        .containsExactly(
            "leadlight: --legs goes without --same-row, --placed, --burst and --bench");
  }
}
