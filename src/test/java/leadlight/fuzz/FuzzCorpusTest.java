package leadlight.fuzz;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Each target takes all of its corpus, {@code src/test/resources/fuzz/TARGET}, without a fault of
 * ours: inputs that reach different code, and all that once ended in a fault.
 */
class FuzzCorpusTest {

  private static final Path CORPUS = Path.of("src/test/resources/fuzz");

  /** Generous, for a build may share its machine; most take milliseconds. */
  private static final Duration SOON = Duration.ofSeconds(30);

  private static final Map<String, Consumer<byte[]>> TARGETS =
      Map.of(
          "Intake", FuzzTargets.Intake::fuzzerTestOneInput,
          "Metadata", FuzzTargets.Metadata::fuzzerTestOneInput,
          "Footprint", FuzzTargets.Footprint::fuzzerTestOneInput,
          "Connector", FuzzTargets.Connector::fuzzerTestOneInput,
          "Limits", FuzzTargets.Limits::fuzzerTestOneInput,
          "Manifest", FuzzTargets.Manifest::fuzzerTestOneInput,
          "Csv", FuzzTargets.Csv::fuzzerTestOneInput,
          "PracticeSet", FuzzTargets.PracticeSet::fuzzerTestOneInput,
          "Import", FuzzTargets.Import::fuzzerTestOneInput);

  static Stream<Arguments> targets() {
    return TARGETS.keySet().stream().sorted().map(Arguments::of);
  }

  @ParameterizedTest
  @MethodSource("targets")
  void takesItsCorpusWithoutAFaultOfOurs(String target) throws IOException {
    List<Path> corpus;
    try (Stream<Path> files = Files.walk(CORPUS.resolve(target))) {
      corpus = files.filter(Files::isRegularFile).sorted().toList();
    }
    assertThat(corpus).hasSizeGreaterThan(1);
    for (Path file : corpus) {
      byte[] input = Files.readAllBytes(file);
      assertTimeoutPreemptively(
          SOON,
          () ->
              assertThatCode(() -> TARGETS.get(target).accept(input))
                  .as(file.toString())
                  .doesNotThrowAnyException(),
          file.toString());
    }
  }
}
