package leadlight.app.score;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.JobScorer;
import leadlight.life.PhotoShelf;
import leadlight.model.UserError;
import leadlight.model.result.Besides;
import leadlight.model.result.Settings;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Subject;
import leadlight.report.ReportWriter;

/** Scores photos of a job into the record, and reports each as it stands. */
public final class JobRun {

  private final Settings settings;
  private final AcceptanceSet limits;
  private final ReportWriter writer;
  private final Path out;
  private final Consumer<Told> told;
  private final Optional<Bench> bench;

  public JobRun(
      Settings settings,
      AcceptanceSet limits,
      ReportWriter writer,
      Path out,
      Consumer<Told> told,
      Optional<Bench> bench) {
    this.settings = settings;
    this.limits = limits;
    this.writer = writer;
    this.out = out;
    this.told = told;
    this.bench = bench;
  }

  /**
   * Scores all.
   *
   * @param folder the record's
   * @param keep whether a copy of each photo is kept there
   * @param person who does it
   */
  public void score(
      List<Path> photos,
      JobRecord record,
      Path folder,
      Subject subject,
      boolean keep,
      String person) {
    JobScorer scorer =
        new JobScorer(
            new JobScorer.Desk(
                limits, writer, record, out, person, Clock.systemDefaultZone(), bench),
            settings);
    PhotoShelf shelf = new PhotoShelf(folder);
    UnaryOperator<Path> kept = keep ? shelf::keep : UnaryOperator.identity();
    for (Path photo : photos) {
      told.accept(one(photo, kept, subject, scorer));
    }
  }

  private static Told one(Path photo, UnaryOperator<Path> kept, Subject subject, JobScorer scorer) {
    try {
      JobScorer.Kept done = scorer.score(kept.apply(photo), subject);
      return new Told.Recorded(
          new Told.Reported(done.scored(), Besides.NONE, done.files()), done.scoring(), subject);
    } catch (UserError e) {
      return new Told.Refused(e);
    }
  }
}
