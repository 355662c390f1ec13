package leadlight.cli.connector;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.connector.ConnectorLibrary;
import leadlight.model.UserError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

class ConnectorCommandTest {

  private static final String FOOTPRINT = "src/test/resources/footprints/stacked.kicad_mod";

  @TempDir Path folder;

  private final StringWriter text = new StringWriter();

  @Test
  void theListHasEveryConnectorInOneLineOfAScreen() {
    assertThat(run("list")).isZero();

    assertThat(text.toString().lines())
        .hasSize(1 + ConnectorLibrary.builtIn().ids().size())
        .allSatisfy(
            line -> assertThat(line).hasSizeLessThanOrEqualTo(100).isEqualTo(line.stripTrailing()))
        .anyMatch(
            line -> line.matches("usb-c-16 +12 +0.50, uneven +0.30-0.60 x 1.15 +USB Type-C.*"))
        .anyMatch(line -> line.matches("flex-0.5 +24, or N +0.50 .*"));
  }

  @Test
  void theSheetNamesPinsFaultsAndSources() {
    assertThat(run("show", "video-a-19-slots")).isZero();

    assertThat(text.toString())
        .containsPattern("\n +18 +18 +8.500 +0.30 +\\+5 V\n")
        .contains("17 - 18  +5 V to ground")
        .contains("foot 1.40, foot seen from above 0.60, land beyond the open end")
        .contains("kicad-footprints 6.0.11-1")
        .contains("(from memory)");
    assertThat(text.toString().lines())
        .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
  }

  @Test
  void anOpenNumberOfLeadsMovesTheLegs() {
    assertThat(run("show", "flex-0.5", "--leads", "30")).isZero();

    assertThat(text.toString()).contains("30, pitch 0.50 mm, span 14.500 mm").contains("-9.150");
  }

  @Test
  void anImportIsWrittenShownAndUsable() {
    Path file = folder.resolve("part.json");
    assertThat(run("import", FOOTPRINT, "--id", "part", "--file", file.toString())).isZero();

    assertThat(text.toString())
        .containsPattern("part +6 +0.50, uneven +0.30-0.60 x 1.20 +stacked")
        .contains("check: 2 pads that lay on another merged with it")
        .contains("written: " + file);
    assertThat(ConnectorLibrary.builtIn().find(file.toString()).id()).isEqualTo("part");
  }

  @Test
  void anExistingFileIsKept() throws Exception {
    Path file = Files.writeString(folder.resolve("mine.json"), "mine");

    assertThat(run("import", FOOTPRINT, "--file", file.toString())).isEqualTo(2);
    assertThat(text.toString()).contains("exists and is kept");
    assertThat(file).hasContent("mine");
  }

  @Test
  void anUnknownConnectorIsAnsweredWithTheNearest() {
    assertThat(run("show", "video-a")).isEqualTo(2);
    assertThat(text.toString()).contains("nearest are ").contains("video-a-19-slots");
  }

  private int run(String... args) {
    PrintWriter out = new PrintWriter(text, true);
    return new CommandLine(new ConnectorCommand())
        .setOut(out)
        .setErr(out)
        .setExecutionExceptionHandler(
            (e, command, parsed) -> {
              assertThat(e).isInstanceOf(UserError.class);
              out.println(e.getMessage());
              return 2;
            })
        .execute(args);
  }
}
