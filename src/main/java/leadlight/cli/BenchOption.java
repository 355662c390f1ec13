package leadlight.cli;

import java.nio.file.Path;
import java.util.Optional;
import leadlight.enrol.Bench;
import leadlight.enrol.BenchFolder;
import leadlight.model.Opinions;
import leadlight.reader.SecondReader;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The enrolled bench that photos come from. */
final class BenchOption {

  @Option(
      names = "--bench",
      paramLabel = "NAME|FILE",
      description = "The enrolled bench that the photos come from (\"leadlight enrol\").")
  private Optional<String> bench = Optional.empty();

  @Mixin private BenchesOption benches;

  /** The bench, if one was named; its reader and opinions must be those in use. */
  Optional<Bench> bench(Opinions opinions) {
    return bench
        .map(name -> new Bench(BenchFolder.find(benches.folder(), name)))
        .map(it -> it.checked(SecondReader.version(), opinions));
  }

  boolean given() {
    return bench.isPresent();
  }

  /** Where benches lie. */
  static final class BenchesOption {

    @Option(
        names = "--benches",
        paramLabel = "DIR",
        defaultValue = "reports/benches",
        description = "Folder of the enrolled benches (default: ${DEFAULT-VALUE}).")
    private Path folder;

    Path folder() {
      return folder;
    }
  }
}
