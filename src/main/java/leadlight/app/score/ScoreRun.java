package leadlight.app.score;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Besides;
import leadlight.model.result.Settings;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;
import leadlight.vision.Threads;

/** Scores photos one by one, reports each, and goes on when one cannot be used. */
public final class ScoreRun {

  private final Supplier<PhotoScorer> made;
  private final ReportWriter writer;
  private final ResultPlace place;
  private final Consumer<Told> told;

  public ScoreRun(
      Settings settings,
      AcceptanceSet limits,
      Optional<Bench> bench,
      ReportWriter writer,
      ResultPlace place,
      Consumer<Told> told) {
    this.made = () -> new PhotoScorer(settings, limits, bench);
    this.writer = writer;
    this.place = place;
    this.told = told;
  }

  /** Scores and reports in the order of the photos. */
  public void score(List<Path> photos, int threads) {
    // Threads go to photos first: within a photo they would wait for each other more often.
    Threads.set(photos.size() > 1 ? 1 : threads);
    // Data files are read while the first photo is, but not for photos that are not there.
    Supplier<PhotoScorer> scorer =
        photos.stream().anyMatch(Files::exists) ? CompletableFuture.supplyAsync(made)::join : made;
    InOrder.each(photos, threads, it -> one(it, scorer), report -> told.accept(report.get()));
  }

  /** Scores one photo; what is given back writes its results, in turn, and closes it. */
  private Supplier<Told> one(Path file, Supplier<PhotoScorer> scorer) {
    try {
      PhotoScorer.Open open = PhotoScorer.open(file, scorer);
      return () -> report(file, open);
    } catch (UserError e) {
      return () -> new Told.Refused(e);
    } catch (RuntimeException | Error e) {
      return () -> new Told.Failed(file, e);
    }
  }

  private Told report(Path file, PhotoScorer.Open open) {
    try (open) {
      Path out = place.of(open.scored().photo());
      WrittenReport written = writer.write(open.scored(), open.photo().frame(), out);
      Told.Reported report = new Told.Reported(open.scored(), Besides.NONE, written);
      return out.equals(place.out()) ? report : new Told.Beside(report, place.out());
    } catch (UserError e) {
      return new Told.Refused(e);
    } catch (RuntimeException | Error e) {
      return new Told.Failed(file, e);
    }
  }
}
