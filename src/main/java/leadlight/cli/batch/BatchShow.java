package leadlight.cli.batch;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leadlight.app.output.RunReport;
import leadlight.batch.BatchRun;
import leadlight.batch.Outcome;
import leadlight.batch.list.JobPhoto;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Progress;
import leadlight.cli.terminal.Streams;
import leadlight.record.JobRecord;
import leadlight.record.scoring.RunPhoto;
import leadlight.text.Messages;

/** Lets a batch run and says on the terminal what becomes of it. */
final class BatchShow {

  private final Streams streams;
  private final JobRecord record;
  private final BatchRun run;
  private final Messages words;
  private final Map<RunPhoto.Outcome, Integer> counts = new EnumMap<>(RunPhoto.Outcome.class);
  private ExitStatus worst = ExitStatus.GOOD;
  private int done;

  BatchShow(Streams streams, JobRecord record, BatchRun run, Messages words) {
    this.streams = streams;
    this.record = record;
    this.run = run;
    this.words = words;
  }

  ExitStatus run(List<JobPhoto> photos) {
    Progress progress = new Progress(streams, photos.size());
    if (run.resumed()) {
      streams.err().println("leadlight: going on with the run in " + run.folder());
    }
    run.score(
        photos,
        outcome -> {
          take(outcome);
          progress.done(++done);
        });
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
