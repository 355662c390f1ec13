package leadlight.cli.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.cli.Run;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One word of the shop's for connector, class and port. */
class PresetTest {

  private static final Path GOOD = Path.of("sample-images/base-station-video-good.jpg");

  @TempDir private Path folder;

  @BeforeEach
  void words() throws IOException {
    Files.writeString(
        Files.createDirectories(record()).resolve("presets.json"),
        """
        {"presets": [
          {"word": "our-video-port", "leads": 19, "pitch_mm": 0.5, "class": 3, "port": "port A"}]}
        """);
  }

  private Path record() {
    return folder.resolve("record");
  }

  private Run score(Object... more) {
    Object[] first = {"score", GOOD, "--out", folder.resolve("out"), "--record", record()};
    Object[] all = java.util.Arrays.copyOf(first, first.length + more.length);
    System.arraycopy(more, 0, all, first.length, more.length);
    return Run.of(all);
  }

  @Test
  void aWordStandsForRowClassAndPortOfTheRecordThatIsNamed() {
    Run run = score("--preset", "our-video-port", "--job", "0412", "--by", "Ada");
    assertThat(run.out()).contains("19 acceptable", "0412, board 1, as received, port A");
    assertThat(Run.of("record", "show", 1, "--record", record()).out()).contains("class    3");
  }

  @Test
  void aWordThatIsNotThereNamesTheNearest() {
    assertThat(score("--preset", "our-vidoe-port").err())
        .hasLineCount(1)
        .contains("did you mean our-video-port?");
  }

  @Test
  void aRowBesideTheWordIsRefused() {
    assertThat(score("--preset", "our-video-port", "--leads", 19).err())
        .hasLineCount(1)
        .contains("--preset says the row");
  }
}
