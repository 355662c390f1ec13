package leadlight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Headless Chromium, driven by the scripts of {@code src/test/browser}. */
public final class Browser {

  private static final Path SCRIPTS = Path.of("src/test/browser");

  private Browser() {}

  /**
   * Where there is no browser or no driver for it, skips the test, saying why; on the build machine
   * ({@code CI} set) fails it, as a page that nobody looked at may not count as looked at.
   */
  public static Path chromium() {
    return chromium(System.getenv("CI") != null);
  }

  private static Path chromium(boolean needed) {
    Optional<Path> chromium =
        Stream.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome")
            .map(Path::of)
            .filter(Files::isExecutable)
            .findFirst();
    require(chromium.isPresent(), needed, "no Chromium here: install the package chromium");
    require(
        Files.isDirectory(SCRIPTS.resolve("node_modules")),
        needed,
        "no playwright-core and axe-core here: run npm ci --prefix " + SCRIPTS);
    return chromium.get();
  }

  static void require(boolean there, boolean needed, String otherwise) {
    if (needed) {
      assertThat(there).as(otherwise).isTrue();
    }
    assumeTrue(there, otherwise);
  }

  /**
   * Runs a script to its end.
   *
   * @param shots folder for screenshots, and for what the script prints
   * @return what it printed
   */
  public static JsonNode run(String script, Path shots, List<String> arguments)
      throws IOException, InterruptedException {
    List<String> command =
        new ArrayList<>(
            List.of(
                "node",
                SCRIPTS.resolve(script).toString(),
                chromium().toString(),
                shots.toString()));
    command.addAll(arguments);
    Path out = shots.resolve(script + ".json");
    Path err = shots.resolve(script + ".log");
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(out.toFile())
            .redirectError(err.toFile())
            .start();
    assertThat(process.waitFor(10, TimeUnit.MINUTES)).as("the browser ends").isTrue();
    assertThat(process.exitValue()).as(Files.readString(err)).isZero();
    return new ObjectMapper().readTree(out.toFile());
  }
}
