package leadlight.cli.bench;

import java.nio.file.Path;
import java.util.Optional;
import leadlight.enrol.Bench;
import leadlight.enrol.BenchFolder;
import leadlight.enrol.DefaultBench;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.reader.SecondReader;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The enrolled bench that photos come from: the one named, or the shop's default. */
public final class BenchOption {

  @Option(
      names = "--no-bench",
      description = "By the general rules alone, whatever bench is the default.")
  private boolean none;

  @Mixin private Named named;

  @Mixin private BenchesOption benches;

  /**
   * The bench, if one was named or is the default.
   *
   * @throws UserError if its reader and opinions are not those in use
   */
  public Optional<Bench> bench(Opinions opinions) {
    if (none && given()) {
      throw new UserError("give --bench or --no-bench, not both");
    }
    if (none || given()) {
      return named.bench(benches, opinions);
    }
    return DefaultBench.in(benches.folder()).map(name -> byDefault(name, opinions));
  }

  private Bench byDefault(String name, Opinions opinions) {
    try {
      return found(name, benches, opinions);
    } catch (UserError e) {
      throw new UserError(
          e.getMessage() + "; it is the default: --no-bench goes by the general rules");
    }
  }

  private static Bench found(String name, BenchesOption benches, Opinions opinions) {
    return new Bench(BenchFolder.find(benches.folder(), name))
        .checked(SecondReader.version(), opinions);
  }

  /** Whether one was named. */
  public boolean given() {
    return named.given();
  }

  /** A bench by its name alone, for commands that no default is meant for. */
  public static final class Named {

    @Option(
        names = "--bench",
        paramLabel = "NAME|FILE",
        description = "The enrolled bench that the photos come from (\"leadlight enrol\").")
    private Optional<String> bench = Optional.empty();

    public boolean given() {
      return bench.isPresent();
    }

    public Optional<Bench> bench(BenchesOption benches, Opinions opinions) {
      return bench.map(name -> found(name, benches, opinions));
    }
  }

  /** Where benches lie. */
  public static final class BenchesOption {

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
