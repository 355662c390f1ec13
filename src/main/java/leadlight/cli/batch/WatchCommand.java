package leadlight.cli.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import leadlight.app.output.OutputFolder;
import leadlight.app.output.RunReport;
import leadlight.app.record.RecordLines;
import leadlight.batch.BatchRun;
import leadlight.batch.FolderWatch;
import leadlight.batch.Outcome;
import leadlight.batch.RunSetup;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.StopSignal;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.record.JobRecord;
import leadlight.record.scoring.RunPhoto;
import leadlight.vision.Threads;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight watch}: scores each photo as it arrives. */
@Command(
    name = "watch",
    description = {
      "Scores each photo that arrives in a folder, until stopped (Ctrl-C).",
      "Folders mean the same as for batch. A file is waited for until it is whole; what is in the "
          + "record already is passed over. A full disk and a folder that vanishes are waited out.",
      "When stopped it writes the run's summary."
    },
    mixinStandardHelpOptions = true)
public final class WatchCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "FOLDER", description = "The folder that photos arrive in.")
  private Path folder;

  @Option(
      names = "--open",
      description =
          "Keep latest.html in the --out folder up to date, to be left open in a browser.")
  private boolean open;

  @Option(
      names = "--nudge",
      paramLabel = "REST",
      description =
          "Photos of pushed leads arrive, of the row that REST shows at rest: says which leads to "
              + "push, and ticks them off. Nothing goes into the record.")
  private Optional<Path> nudge = Optional.empty();

  @Mixin private RunOptions options;

  private final PushedLeads pushed;

  public WatchCommand(Streams streams, PushedLeads pushed) {
    this.streams = streams;
    this.pushed = pushed;
  }

  @Override
  public Integer call() {
    if (!Files.isDirectory(folder)) {
      throw new UserError(folder + " is no folder; name the one that photos arrive in");
    }
    if (nudge.isPresent()) {
      if (open) {
        throw new UserError("--open follows single photos: leave it out with --nudge");
      }
      return pushed.watch(options.sitting(folder, nudge.get()));
    }
    int threads = Runtime.getRuntime().availableProcessors();
    RunSetup setup = options.setup(threads, false);
    Threads.set(threads);
    String what =
        "watch %s (%s, limits %s)"
            .formatted(folder.toAbsolutePath().normalize(), options.how(), setup.limits().id());
    try (StopSignal signal = new StopSignal();
        JobRecord record = options.record();
        BatchRun run = BatchRun.open(what, options.out(), record, setup)) {
      FolderWatch watch = new FolderWatch(folder, options.defaults(), run);
      signal.asks(watch::stop);
      watch.warmUp();
      WatchShow show = new WatchShow(streams, open, options.out());
      streams.err().println("leadlight: watching " + folder + ", results in " + run.folder());
      watch.watch(show::took, line -> streams.err().println("leadlight: " + line));
      Path page = new RunReport(record, run.folder(), options.words()).write(run.id());
      run.end();
      streams.out().println("wrote " + page);
    }
    return ExitStatus.GOOD.code();
  }

  /** Says what became of each photo that arrived: a line, and the latest picture if wanted. */
  private static final class WatchShow {

    private static final String PICTURE = "latest.png";

    /** Shows the picture anew each second; nothing from outside stands in it. */
    private static final String PAGE =
        """
        <!doctype html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="refresh" content="1">
        <title>The latest photo</title>
        </head>
        <body><img src="latest.png" alt="The latest photo, scored" width="100%"></body>
        </html>
        """;

    private final Streams streams;
    private final boolean open;
    private final Path out;

    WatchShow(Streams streams, boolean open, Path out) {
      this.streams = streams;
      this.open = open;
      this.out = out;
      if (open) {
        OutputFolder.make(out);
        WholeFile.write(out.resolve("latest.html"), PAGE.getBytes(StandardCharsets.UTF_8));
        streams.err().println("leadlight: the latest photo is in " + out.resolve("latest.html"));
      }
    }

    void took(Outcome outcome) {
      if (outcome.message().isPresent()) {
        streams.err().println("leadlight: " + outcome.message().get());
      } else if (outcome.kind() == RunPhoto.Outcome.SCORED) {
        streams.out().println(line(outcome));
        streams.out().flush();
        if (open) {
          show(outcome.results().orElseThrow());
        }
      }
    }

    private static String line(Outcome outcome) {
      return "%s, %s, %s, %s: %s"
          .formatted(
              RecordLines.printable(outcome.photo().subject().job()),
              RecordLines.board(outcome.photo().subject().board()),
              outcome.photo().subject().words(),
              RecordLines.printable(outcome.photo().photo().getFileName().toString()),
              outcome.verdict().orElseThrow().id());
    }

    private void show(Path json) {
      String name = json.getFileName().toString();
      Path picture =
          json.resolveSibling(
              name.substring(0, name.length() - ".json".length()) + ".annotated.png");
      try {
        WholeFile.write(out.resolve(PICTURE), Files.readAllBytes(picture));
      } catch (UserError e) {
        streams.err().println("leadlight: " + e.getMessage());
      } catch (IOException e) {
        streams.err().println("leadlight: " + picture + " is gone again; it is not shown");
      }
    }
  }
}
