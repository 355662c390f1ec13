package leadlight.cli.batch;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import leadlight.batch.BatchRun;
import leadlight.batch.RunSetup;
import leadlight.batch.list.JobList;
import leadlight.batch.list.JobPhoto;
import leadlight.cli.option.ThreadOption;
import leadlight.cli.terminal.StopSignal;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
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
          + "attempt, connector, row, leads, pitch_mm, body, class.",
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
      return new BatchShow(streams, record, run, options.words()).run(photos).code();
    }
  }
}
