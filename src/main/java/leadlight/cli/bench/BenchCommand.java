package leadlight.cli.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.Reports;
import leadlight.cli.drill.DrillDesk;
import leadlight.cli.option.GuardedLimits;
import leadlight.cli.option.PageOptions;
import leadlight.cli.option.Person;
import leadlight.cli.option.ProductClass;
import leadlight.cli.option.RecordOption;
import leadlight.cli.option.RowOptions;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.desk.BenchServer;
import leadlight.desk.BenchSetup;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.Presets;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.vision.Threads;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight bench}: the page at the bench. */
@Command(
    name = "bench",
    description = {
      "Serves a page for the bench to a browser of this computer alone: from a photo to the decision"
          + " to hand the board back.",
      "It shows the camera live, or, where a FOLDER is named, the newest photo in it. Space, Enter,"
          + " Page Down or a foot switch that sends one of them takes the picture."
    },
    mixinStandardHelpOptions = true)
public final class BenchCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(
      paramLabel = "FOLDER",
      arity = "0..1",
      description = "A folder that a microscope's own program saves photos to.")
  private Optional<Path> folder = Optional.empty();

  @Mixin private ProductClass productClass;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports",
      description = "Folder for the results (default: ${DEFAULT-VALUE}).")
  private Path out;

  @Mixin private BenchOption bench;

  @Mixin private RecordOption record;

  @Mixin private RowOptions row;

  @Mixin private GuardedLimits limits;

  @Mixin private PageOptions pages;

  @Mixin private Person person;

  @Mixin private ThreadOption threads;

  public BenchCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    int of = productClass.number();
    Presets presets = Presets.read(record.folder().resolve("presets.json"));
    if (row.request().isEmpty() && presets.presets().isEmpty()) {
      throw new UserError(
          "say which row: --connector ID, or --leads N --pitch MM, or write presets.json");
    }
    if (!row.request().isEmpty()) {
      row.spec();
    }
    folder
        .filter(path -> !Files.isDirectory(path))
        .ifPresent(
            path -> {
              throw new UserError(path + " is no folder");
            });
    Threads.set(threads.count());
    OutputFolder.make(out);
    AcceptanceSet set = limits.load();
    Optional<Bench> enrolled = bench.bench(Opinions.BOTH);
    try (JobRecord open = record.open();
        BenchServer server = BenchServer.start(setup(open, of, presets, set, enrolled))) {
      streams.out().println("open this address in a browser of this computer:");
      streams.out().println("  " + server.address());
      streams.out().println("everything is kept at once; end by Ctrl-C");
      if (streams.interactive()) {
        DrillDesk.browse(server.address());
      }
      server.awaitLeave();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return ExitStatus.GOOD.code();
  }

  private BenchSetup setup(
      JobRecord open, int of, Presets presets, AcceptanceSet set, Optional<Bench> enrolled) {
    return new BenchSetup(
        open,
        record.folder(),
        out,
        folder,
        row.request(),
        of,
        presets,
        set,
        Reports.writer(set, pages.context(set, row.request())),
        pages.words(),
        person.name(),
        Clock.systemDefaultZone(),
        enrolled);
  }
}
