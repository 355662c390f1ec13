package leadlight.cli.batch;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import leadlight.app.output.RunReport;
import leadlight.app.score.LegsRun;
import leadlight.batch.BatchRun;
import leadlight.batch.Outcome;
import leadlight.batch.RunSetup;
import leadlight.batch.list.JobList;
import leadlight.batch.list.JobPhoto;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.StopSignal;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
import leadlight.record.scoring.RunPhoto;
import leadlight.text.Messages;
import leadlight.vision.Threads;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight batch}: a day's photos, job by job. */
@Command(
    name = "batch",
    description = {
      "Scores a day's photos, job by job, into a folder of the run's own and the record.",
      "",
      "A folder holds JOB/BOARD/STAGE/photo. STAGE is \"as received\", \"after rework\" or "
          + "\"final\", with a number from the second time on; without one it is as received. "
          + "Without BOARD it is board 1. A name that ends in [ID] states the connector.",
      "A manifest is a table with the columns photo and job, and, if wanted, board, stage, "
          + "attempt, connector, row, leads, pitch_mm, body, class, port, legs. legs is the side "
          + "of the board, solder or component, that a photo of the connector's anchor legs shows.",
      "What is in the record with the same content and settings is not scored again; a run that "
          + "was broken off is gone on with. A photo that cannot be used is named and skipped."
    },
    mixinStandardHelpOptions = true)
public final class BatchCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "FOLDER|MANIFEST.csv", description = "The photos.")
  private Path source;

  @Option(names = "--again", description = "Score also what has not changed.")
  private boolean again;

  @Mixin private RunOptions options;

  @Mixin private ThreadOption threads;

  public BatchCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    RunSetup setup = options.setup(threads.count(), again);
    List<JobPhoto> photos = JobList.read(source, options.defaults());
    Threads.set(photos.size() > 1 ? 1 : setup.threads());
    String what =
        source.toAbsolutePath().normalize()
            + " ("
            + options.how()
            + ", limits "
            + setup.limits().id()
            + (again ? ", again" : "")
            + ")";
    try (StopSignal signal = new StopSignal();
        JobRecord record = options.record();
        BatchRun run = BatchRun.open(what, options.out(), record, setup)) {
      signal.asks(run::stop);
      LegsRun legs = new LegsRun(record, options.shelf(), setup, run.folder());
      return new BatchShow(streams, record, run, legs, options.words()).run(photos).code();
    }
  }

  /** Lets a batch run and says on the terminal what becomes of it. */
  private static final class BatchShow {

    private final Streams streams;
    private final JobRecord record;
    private final BatchRun run;
    private final LegsRun legs;
    private final Messages words;
    private final Map<RunPhoto.Outcome, Integer> counts = new EnumMap<>(RunPhoto.Outcome.class);
    private ExitStatus worst = ExitStatus.GOOD;
    private int done;

    BatchShow(Streams streams, JobRecord record, BatchRun run, LegsRun legs, Messages words) {
      this.streams = streams;
      this.record = record;
      this.run = run;
      this.legs = legs;
      this.words = words;
    }

    ExitStatus run(List<JobPhoto> photos) {
      Progress progress = new Progress(streams, photos.size());
      if (run.resumed()) {
        streams.err().println("leadlight: going on with the run in " + run.folder());
      }
      Consumer<Outcome> took =
          outcome -> {
            take(outcome);
            progress.done(++done);
          };
      run.score(photos.stream().filter(it -> it.legs().isEmpty()).toList(), took);
      for (JobPhoto photo : LegsRun.inOrder(photos)) {
        if (!run.stopped()) {
          took.accept(legs.take(photo));
        }
      }
      if (run.stopped()) {
        streams.err().println("leadlight: " + stopped(photos.size()));
        return worst;
      }
      Path page = new RunReport(record, run.folder(), words).write(run.id());
      run.end();
      streams.out().println(line(photos.size()));
      streams.out().println("wrote " + page);
      return worst;
    }

    private String stopped(int photos) {
      return "stopped after %d of %d photos; the same command goes on with the rest"
          .formatted(done, photos);
    }

    private void take(Outcome outcome) {
      counts.merge(outcome.kind(), 1, Integer::sum);
      outcome.message().ifPresent(line -> streams.err().println("leadlight: " + line));
      worst =
          worst.worse(
              switch (outcome.kind()) {
                case SCORED, UNCHANGED -> ExitStatus.of(outcome.verdict().orElseThrow());
                case REFUSED -> ExitStatus.UNUSABLE;
                case FAULT -> ExitStatus.FAULT;
              });
    }

    private String line(int photos) {
      return "%d photo%s: %d scored, %d unchanged, %d cannot be used"
          .formatted(
              photos,
              photos == 1 ? "" : "s",
              counts.getOrDefault(RunPhoto.Outcome.SCORED, 0),
              counts.getOrDefault(RunPhoto.Outcome.UNCHANGED, 0),
              counts.getOrDefault(RunPhoto.Outcome.REFUSED, 0)
                  + counts.getOrDefault(RunPhoto.Outcome.FAULT, 0));
    }
  }
}
