package leadlight.life;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZonedDateTime;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Method;
import leadlight.record.scoring.NewScoring;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Subject;
import leadlight.report.ReportWriter;
import leadlight.report.WrittenReport;

/**
 * Scores photos of jobs straight into the record, and brings their results up to date when people
 * or the bench said something: results first, record second, as a batch does.
 */
public final class JobScorer {

  private final Desk desk;
  private final Settings settings;
  private final PhotoScorer scorer;
  private final ReportWriter writer;

  /**
   * What all photos have in common.
   *
   * @param limits the limits to judge by
   * @param writer writes the results
   * @param record where it is kept
   * @param out folder for the results
   * @param person who asks for it
   * @param clock tells the time and the zone
   * @param bench the enrolled bench that the photos come from, if one is known
   */
  public record Desk(
      AcceptanceSet limits,
      ReportWriter writer,
      JobRecord record,
      Path out,
      String person,
      Clock clock,
      Optional<Bench> bench) {}

  /** Scores rows as asked for. */
  public JobScorer(Desk desk, Settings settings) {
    this.desk = desk;
    this.settings = settings;
    this.scorer = new PhotoScorer(settings, desk.limits, desk.bench);
    this.writer = desk.writer;
  }

  /**
   * A photo in the record.
   *
   * @param scoring its number
   * @param scored what the tool says, or, of one that was there already, what stands
   * @param files its results
   */
  public record Kept(long scoring, ScoredPhoto scored, WrittenReport files) {}

  /** Looks at a photo without keeping anything. */
  public ScoredPhoto glance(Photo photo) {
    return scorer.score(photo);
  }

  /**
   * Scores a photo, writes its results and records it.
   *
   * @throws UserError if the photo cannot be used or nothing can be written
   */
  public Kept score(Path file, Subject subject) {
    try (PhotoScorer.Open open = PhotoScorer.open(file, () -> scorer)) {
      return keep(open.photo(), file, subject, open.scored());
    }
  }

  /**
   * Writes and records what was made of an open photo. Of one that was scored alike before, what
   * stands of it is written anew.
   *
   * @throws UserError if nothing can be written, or somebody changed its results since
   */
  public Kept keep(Photo photo, Path file, Subject subject, ScoredPhoto scored) {
    Optional<Scoring> before =
        desk.record.find(subject, photo.info().file(), photo.info().sha256(), method());
    return before.map(it -> anew(photo, it)).orElseGet(() -> added(photo, file, subject, scored));
  }

  private Kept added(Photo photo, Path file, Subject subject, ScoredPhoto scored) {
    // Results of the same photo are written over, and another scoring's must stay as proven.
    Path out = proven(photo).free(desk.out);
    WrittenReport files = writer.write(scored, photo.frame(), out);
    long id =
        desk.record.add(
            new NewScoring(
                subject,
                file,
                scored,
                method(),
                files.json(),
                desk.person,
                ZonedDateTime.now(desk.clock),
                false));
    return new Kept(id, scored, files);
  }

  private ProvenResults proven(Photo photo) {
    return ProvenResults.of(desk.record, photo.info().sha256());
  }

  private Kept anew(Photo photo, Scoring before) {
    long id = before.id();
    ScoredPhoto stands = StandingPhoto.of(scorer, photo, before, desk.record.row(id));
    AtomicReference<WrittenReport> files = new AtomicReference<>();
    Path own = before.results().getParent();
    Path out = proven(photo).areIn(desk.out) ? own : desk.out;
    if (ProvenResults.isSameFolder(out, own)) {
      Runnable write = () -> files.set(writer.rewrite(stands, photo.frame(), before.results()));
      StandingPhoto.rewrite(desk.record, id, write)
          .ifPresent(
              changed -> {
                throw new UserError(changed + ", or name another folder for the new ones");
              });
    } else {
      files.set(writer.write(stands, photo.frame(), out));
    }
    return new Kept(id, stands, files.get());
  }

  private Method method() {
    return new Method(
        settings,
        desk.limits.sha256(),
        desk.writer.context().toolVersion(),
        settings.opinions() == Opinions.MEASURES
            ? Optional.empty()
            : Optional.of(desk.writer.context().reader()),
        desk.bench.map(Bench::identity));
  }
}
