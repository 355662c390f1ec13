package leadlight.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every command that the README and the tour show runs, with its results in another place. */
class ReadmeTest {

  private static final Pattern BLOCK = Pattern.compile("(?s)```[a-z]*\\n(.*?)```");
  private static final String US = "./leadlight ";

  @TempDir private Path folder;

  @TestFactory
  List<DynamicTest> commandsOfTheReadme() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (MatchResult block : BLOCK.matcher(shown()).results().toList()) {
      block
          .group(1)
          .lines()
          .filter(line -> line.startsWith(US))
          .forEach(line -> tests.add(DynamicTest.dynamicTest(line, () -> assertRuns(line))));
    }
    assertThat(tests).as("commands in the README").isNotEmpty();
    return tests;
  }

  private static String shown() throws IOException {
    return Files.readString(Path.of("README.md")) + Files.readString(Path.of("docs/tour.md"));
  }

  private void assertRuns(String line) {
    List<Object> args =
        new ArrayList<>(List.of((Object[]) line.substring(US.length()).split(" +")));
    if (args.contains("score") || args.contains("trial")) {
      args.add("--out");
      args.add(folder);
    }

    Run run = Run.of(args.toArray());

    assertThat(run.status()).as(run.err()).isIn(0, 3, 4);
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isNotBlank();
  }
}
