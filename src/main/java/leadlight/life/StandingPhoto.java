package leadlight.life;

import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.result.ScoredPhoto;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.report.ReportWriter;

/**
 * A recorded photo as it stands: the verdicts that count, for pages, pictures and tables. One
 * source for all of them, so that they agree on every pin.
 */
public final class StandingPhoto {

  private StandingPhoto() {}

  /** What stands of a photo, ready for a report. */
  public static ScoredPhoto of(
      AcceptanceSet limits, Photo photo, Scoring scoring, RecordedRow row) {
    return of(new PhotoScorer(scoring.method().settings(), limits), photo, scoring, row);
  }

  static ScoredPhoto of(PhotoScorer scorer, Photo photo, Scoring scoring, RecordedRow row) {
    return scorer.retold(
        photo, row.outcome(), row.standing(), scoring.rowNotes(), scoring.fitness());
  }

  /**
   * Brings the results of a scoring up to date with what stands. Nothing is done if the photo is
   * gone or was changed: the record has it all the same. Nor if somebody changed the results: new
   * ones would hide it.
   *
   * @return in a line what was changed, if so
   */
  public static Optional<String> refresh(
      JobRecord record, long id, AcceptanceSet limits, PhotoShelf shelf, ReportWriter writer) {
    Scoring scoring = record.scoring(id);
    Optional<Photo> open = shelf.open(scoring);
    if (open.isEmpty() || scoring.results().getParent() == null) {
      return Optional.empty();
    }
    try (Photo photo = open.get()) {
      ScoredPhoto stands = of(limits, photo, scoring, record.row(id));
      return rewrite(record, id, () -> writer.rewrite(stands, photo.frame(), scoring.results()));
    }
  }

  static Optional<String> rewrite(JobRecord record, long id, Runnable write) {
    return record.rewriteResults(id, write).stream()
        .findFirst()
        .map(
            file ->
                "the results of scoring %d stay as they are: %s; run \"leadlight record verify\""
                    .formatted(id, file));
  }
}
