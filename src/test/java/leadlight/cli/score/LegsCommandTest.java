package leadlight.cli.score;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.cli.Run;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LegsCommandTest {

  private static final Path PICTURE = Path.of("src/test/resources/leadlight/leg/legs-023.jpg");

  @TempDir private Path folder;

  private Run legs(Object... more) {
    Object[] args = new Object[more.length + 4];
    args[0] = "legs";
    args[1] = PICTURE;
    args[2] = "--out";
    args[3] = folder;
    System.arraycopy(more, 0, args, 4, more.length);
    return Run.of(args);
  }

  @Test
  void eachLegIsMeasuredAndJudgedAndTheWorstDecidesTheStatus() throws IOException {
    Run run = legs("--side", "solder", "--connector", "video-a-19-holes");

    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).startsWith("legs-023.jpg: DEFECT");
    JsonNode json = new ObjectMapper().readTree(folder.resolve("legs-023.legs.json").toFile());
    assertThat(json.get("side").asText()).isEqualTo("solder");
    assertThat(json.get("legs")).hasSize(4);
    for (JsonNode leg : json.get("legs")) {
      assertThat(leg.at("/measures/wetted_deg/value").asDouble()).isBetween(0.0, 360.0);
      assertThat(leg.at("/measures/wetted_deg/u").asDouble()).isPositive();
      assertThat(leg.has("unjudged_because"))
          .isEqualTo("unjudged".equals(leg.get("verdict").asText()));
    }
    assertThat(json.get("not_visible").toString()).contains("no photo shows it");
    assertThat(Files.size(folder.resolve("legs-023.legs.png"))).isPositive();
  }

  @Test
  void whatDoesNotFitIsSaidInOneLine() {
    assertThat(legs("--side", "solder").errLines())
        .containsExactly("leadlight: give --connector, or --land-size and --hole-size");
    assertThat(legs("--side", "solder", "--land-size", "1.8", "--hole-size", "1.3,1.3").errLines())
        .containsExactly(
            "leadlight: --land-size must be width,height in millimetres, as 1.0,1.9, is \"1.8\"");
    assertThat(legs("--side", "solder", "--land-size", "1,1", "--hole-size", "1.3,1.3").errLines())
        .containsExactly("leadlight: --hole-size must be smaller than --land-size");
    assertThat(legs("--side", "solder", "--connector", "flex-0.5").err())
        .contains("has no legs in plated holes");
    assertThat(legs("--side", "solder", "--connector", "usb-c-16", "--leg", "5").errLines())
        .containsExactly("leadlight: --leg must lie in 1 to 4, is 5");
    assertThat(legs("--side", "rear", "--connector", "usb-c-16").status()).isEqualTo(2);
  }

  @Test
  void samePhotoSameBytes() throws IOException {
    legs("--side", "solder", "--connector", "video-a-19-holes");
    byte[] first = Files.readAllBytes(folder.resolve("legs-023.legs.json"));
    byte[] picture = Files.readAllBytes(folder.resolve("legs-023.legs.png"));
    legs("--side", "SOLDER", "--connector", "video-a-19-holes");
    assertThat(folder.resolve("legs-023.legs.json")).hasBinaryContent(first);
    assertThat(folder.resolve("legs-023.legs.png")).hasBinaryContent(picture);
  }

  @Test
  void resultsOfAnotherPhotoAreNotOverwritten() throws IOException {
    Path theirs = folder.resolve("legs-023.legs.json");
    Files.writeString(theirs, "{\"photo\": {\"sha256\": \"0\"}}");
    Run run = legs("--side", "solder", "--connector", "video-a-19-holes");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err()).contains("is of another photo; name another folder by --out");
    assertThat(theirs).content().contains("\"0\"");
  }
}
