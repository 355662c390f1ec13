package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a folder or a list may hold that once stopped a day. */
class LinksTest {

  @TempDir private Path folder;

  private Run batch(Path photos) {
    return Run.of(
        "batch",
        photos,
        "--leads",
        19,
        "--pitch",
        0.5,
        "--threads",
        1,
        "--out",
        folder.resolve("out"),
        "--record",
        folder.resolve("record"));
  }

  @Test
  void aLinkToAFolderAboveIsLeftOut() throws IOException {
    assumeFalse(System.getProperty("os.name").startsWith("Windows"));
    Path day = Files.createDirectories(folder.resolve("day/0412/A1"));
    Files.copy(Path.of("sample-images/base-station-video-good.jpg"), day.resolve("row.jpg"));
    Files.createSymbolicLink(day.resolve("up"), folder.resolve("day"));
    Run run = batch(folder.resolve("day"));
    assertThat(run.status()).as(run.err()).isZero();
  }

  @Test
  void aManifestAsSpreadsheetsSaveItIsRead() throws IOException {
    Path manifest = folder.resolve("day.csv");
    Files.write(manifest, "\ufeffphoto,job\nnone.jpg,0412\n".getBytes(StandardCharsets.UTF_8));
    assertThat(batch(manifest).err()).doesNotContain("photo,").contains("none.jpg");
  }

  @Test
  void aNameCannotTalkToTheTerminal() {
    Run run = Run.of("score", "a\u001b[31m\u0007.jpg", "--leads", 19, "--pitch", 0.5);
    assertThat(run.err()).doesNotContain("\u001b").doesNotContain("\u0007").contains("a?[31m?.jpg");
  }
}
