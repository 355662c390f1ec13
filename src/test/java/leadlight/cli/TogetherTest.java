package leadlight.cli;

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
import leadlight.data.DataFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TogetherTest {

  private static final Path PICTURES = Path.of("src/test/resources/nudge");
  private static final Path ROW = PICTURES.resolve("nudge-007-a.jpg");
  private static final Path AGAIN = PICTURES.resolve("nudge-007-c.jpg");
  private static final Path OTHER = PICTURES.resolve("nudge-003-b.jpg");

  @TempDir private Path folder;

  private JsonNode score(String result, Object... args) throws IOException {
    Object[] all = new Object[args.length + 7];
    all[0] = "score";
    System.arraycopy(args, 0, all, 1, args.length);
    Object[] more = {"--leads", 12, "--pitch", 0.5, "--out", folder};
    System.arraycopy(more, 0, all, args.length + 1, more.length);
    Run.of(all);
    String json = Files.readString(folder.resolve(result));
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(DataFile.builtIn("schema/report.schema.json").text());
    assertThat(schema.validate(json, InputFormat.JSON)).isEmpty();
    return new ObjectMapper().readTree(json);
  }

  @Test
  void twoPhotosOfOneRowAreJoinedIntoTheFirst() throws IOException {
    JsonNode report = score("nudge-007-a.joined.json", "--same-row", ROW, AGAIN);
    assertThat(report.path("photos")).hasSize(2);
    assertThat(report.path("photos").path(1).path("role").asText()).isEqualTo("same row");
    assertThat(report.path("joints").path(0).path("seen_in")).hasSize(2);
  }

  @Test
  void anotherRowIsNotJoined() throws IOException {
    JsonNode report = score("nudge-007-a.joined.json", "--same-row", ROW, OTHER);
    assertThat(report.path("photos").path(1).path("role").asText()).isEqualTo("refused");
    assertThat(report.path("joints").path(0).path("seen_in")).hasSize(1);
  }

  @Test
  void aRowThatIsAsItWasSetDownIsOpenWhateverItLooksLike() throws IOException {
    JsonNode report = score("nudge-007-a.json", ROW, "--placed", ROW);
    assertThat(report.path("placed").path("file").asText()).isEqualTo("nudge-007-a.jpg");
    for (JsonNode joint : report.path("joints")) {
      assertThat(joint.path("change").path("soldered").asDouble()).isLessThan(0.05);
      assertThat(joint.path("verdict").asText()).isEqualTo("defect");
      assertThat(joint.path("findings").path(0).path("kind").asText()).isEqualTo("open");
    }
  }

  @Test
  void aBurstIsAFolderOfFrames() throws IOException {
    Files.copy(ROW, folder.resolve("row.jpg"));
    assertThat(burst(folder.resolve("not-there"))).contains("is no folder");
    assertThat(burst(folder)).contains("holds 1 photo;");
  }

  private static String burst(Path frames) {
    Run run = Run.of("score", "--burst", frames, "--leads", 12, "--pitch", 0.5);
    assertThat(run.status()).isEqualTo(2);
    return run.err();
  }

  @Test
  void aLatestPageIsNotKeptOfPushedLeads() {
    Run run = Run.of("watch", folder, "--nudge", ROW, "--open", "--leads", 12, "--pitch", 0.5);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines()).hasSize(1).first().asString().contains("--open");
  }

  @Test
  void eitherIsAskedForButNotBoth() {
    Run run =
        Run.of("score", ROW, AGAIN, "--same-row", "--placed", AGAIN, "--leads", 12, "--pitch", 0.5);
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines())
        .containsExactly("leadlight: give one of --same-row, --placed and --burst");
  }
}
