package leadlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the program says where nothing can be read. */
class ArchiveMainTest {

  @TempDir private Path temp;

  private record Said(int status, String out, String err) {}

  private static Said said(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int status =
        ArchiveMain.run(
            new PrintStream(out, true, StandardCharsets.UTF_8),
            new PrintStream(err, true, StandardCharsets.UTF_8),
            args);
    return new Said(
        status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }

  @Test
  void theProgramRefusesInALine() {
    Said said =
        said(
            "read", temp.resolve("no.csv").toString(), "--out", temp.resolve("archive").toString());
    assertThat(said.status()).isEqualTo(2);
    assertThat(said.err()).contains("no.csv cannot be read").hasLineCount(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"read", "rates", "changes"})
  void eachCommandSaysItsOptionsAndItsVersion(String command) {
    Said help = said(command, "--help");
    assertThat(help.status()).isZero();
    assertThat(help.out()).contains("Usage: leadlight-archive " + command);
    assertThat(said(command, "--version")).isEqualTo(said("--version"));
    assertThat(said("rates", "--help").out()).contains("--of=V");
    assertThat(said("--version").out()).contains(PhotoScoring.version());
  }

  @Test
  void aFaultOfOursIsALineAndItsDetailsAreKept() throws IOException {
    Path broken = Files.createDirectories(temp.resolve("broken/version=one"));
    Files.writeString(broken.resolve("part.parquet"), "no Parquet");
    Said said = said("rates", broken.getParent().toString(), "--by", "pin");
    assertThat(said.status()).isEqualTo(70);
    assertThat(said.err()).contains("a fault of ours").contains("details in ").hasLineCount(1);
    Path log = Path.of(said.err().strip().replaceFirst(".*details in ", ""));
    assertThat(log).content().contains("part.parquet");
    Files.delete(log);
  }
}
