package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import leadlight.app.output.FaultLog;
import leadlight.cli.terminal.ExitStatus;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MainTest {

  @TempDir private Path folder;

  @Test
  void helpNamesEveryExitStatusWorstFirst() {
    Run help = Run.of("score", "--help");

    assertThat(help.status()).isZero();
    assertThat(help.out())
        .containsSubsequence(
            "70   a fault", "2   usage", "3   at least", "4   no def", "0   every");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--help", "score --help", "trial --help", "--version"})
  void helpNeedsNoNativeLibrary(String args) throws Exception {
    Process program = program(args.split(" "));

    assertThat(program.waitFor(60, TimeUnit.SECONDS)).isTrue();
    assertThat(program.exitValue()).isZero();
    try (Stream<Path> unpacked = Files.walk(folder)) {
      assertThat(unpacked).containsExactly(folder);
    }
  }

  /** The program by itself, with a cache folder of its own. */
  private Process program(String... args) throws IOException {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Duser.home=" + folder,
                "-Djava.io.tmpdir=" + folder,
                "-XX:-UsePerfData",
                Main.class.getName()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("XDG_CACHE_HOME", folder.toString());
    builder.environment().put("LOCALAPPDATA", folder.toString());
    return builder
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .redirectError(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  @Test
  void anUnknownOptionIsOneLineAndUsage() {
    Run run = Run.of("score", "a.jpg", "--wrong");

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.errLines())
        .containsExactly("leadlight: no option is called --wrong (see leadlight score --help)");
  }

  @Test
  void wordsOfOptionsAreTakenInAnyCase() {
    for (String end : List.of("left", "LEFT")) {
      Run run = Run.of("score", "none.jpg", "--leads", "19", "--pitch", "0.5", "--pin1", end);
      assertThat(run.err()).contains("none.jpg").doesNotContain("--pin1");
    }
  }

  @Test
  void aFaultOfOursIsOneLineAndAFileWithTheDetails() throws IOException {
    String line = FaultLog.write(new IllegalStateException("seven"));

    assertThat(line).startsWith("a fault of ours, not of your input: IllegalStateException");
    Path log = Path.of(line.substring(line.indexOf("details in ") + 11));
    assertThat(log).content().contains("seven").contains("MainTest");
    Files.delete(log);
  }

  @Test
  void theWorstStatusWins() {
    assertThat(ExitStatus.GOOD.worse(ExitStatus.UNJUDGED).worse(ExitStatus.DEFECT).code())
        .isEqualTo(3);
    assertThat(ExitStatus.DEFECT.worse(ExitStatus.UNUSABLE).code()).isEqualTo(2);
    assertThat(ExitStatus.FAULT.worse(ExitStatus.UNUSABLE).code()).isEqualTo(70);
  }
}
