package leadlight.cli.score;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.FaultLog;
import leadlight.cli.terminal.Streams;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Settings;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.vision.Threads;

/** Scores photos one by one, reports each, and goes on when one cannot be used. */
final class ScoreRun {

  private final CompletableFuture<PhotoScorer> scorer;
  private final ReportWriter writer;
  private final ResultPlace place;
  private final ScoreTalk talk;
  private final Streams streams;
  private ExitStatus worst = ExitStatus.GOOD;

  ScoreRun(
      Settings settings,
      AcceptanceSet limits,
      Optional<Bench> bench,
      ReportWriter writer,
      ResultPlace place,
      ScoreTalk talk,
      Streams streams) {
    // Its data files are read while the first photo is: together they were a tenth of a second.
    this.scorer = CompletableFuture.supplyAsync(() -> new PhotoScorer(settings, limits, bench));
    this.writer = writer;
    this.place = place;
    this.talk = talk;
    this.streams = streams;
  }

  /** Scores and reports in the order of the photos; the worst status of all. */
  ExitStatus score(List<Path> photos, int threads) {
    // Threads go to photos first: within a photo they would wait for each other more often.
    Threads.set(photos.size() > 1 ? 1 : threads);
    InOrder.each(photos, threads, this::one, report -> worst = worst.worse(report.get()));
    return worst;
  }

  /** Scores one photo; what is given back writes its results, in turn, and closes it. */
  private Supplier<ExitStatus> one(Path file) {
    try {
      PhotoScorer.Open open = PhotoScorer.open(file, scorer::join);
      return () -> report(file, open);
    } catch (UserError e) {
      return () -> talk.refused(e);
    } catch (RuntimeException | Error e) {
      return () -> fault(file, e);
    }
  }

  private ExitStatus report(Path file, PhotoScorer.Open open) {
    try (open) {
      Path out = place.of(open.scored().photo());
      WrittenReport written = writer.write(open.scored(), open.photo().frame(), out);
      talk.of(open.scored(), written);
      if (!out.equals(place.out())) {
        talk.line("  its results in " + place.out() + " are in the record and stay as they are");
      }
      return ExitStatus.of(open.scored().verdict());
    } catch (UserError e) {
      return talk.refused(e);
    } catch (RuntimeException | Error e) {
      return fault(file, e);
    }
  }

  private ExitStatus fault(Path file, Throwable e) {
    streams.err().println("leadlight: " + file + ": " + FaultLog.write(e));
    return ExitStatus.FAULT;
  }
}
