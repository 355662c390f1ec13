package leadlight.app.output;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.app.record.RecordLines;
import leadlight.data.Hash;
import leadlight.data.WholeFile;
import leadlight.model.UserError;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowOutcome;
import leadlight.page.DayPage;
import leadlight.page.words.RecordWords;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.record.JobRecord;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.report.strip.ComparedRows;
import leadlight.report.strip.ShownRow;
import leadlight.report.words.PictureWords;
import leadlight.summary.day.BeforeAfter;
import leadlight.summary.day.DayGatherer;
import leadlight.summary.day.DaySummary;
import leadlight.summary.day.PhotoLine;
import leadlight.summary.day.PinChange;
import leadlight.summary.day.SummaryTables;
import leadlight.text.Messages;

/**
 * Writes what a run, or a day, comes to into its folder: page, tables, pictures of before and
 * after.
 */
public final class RunReport {

  private final JobRecord record;
  private final Path folder;
  private final Messages words;

  public RunReport(JobRecord record, Path folder, Messages words) {
    this.record = record;
    this.folder = folder;
    this.words = words;
  }

  /** Writes all of a run; where the page lies. */
  public Path write(long run) {
    return write(DayGatherer.of(record, run, folder));
  }

  /** Writes all of a summary; where the page lies. */
  public Path write(DaySummary summary) {
    summary.changes().forEach(this::picture);
    WholeFile.write(folder.resolve("photos.csv"), out -> SummaryTables.photos(summary, out));
    WholeFile.write(folder.resolve("changes.csv"), out -> SummaryTables.changes(summary, out));
    Path page = folder.resolve("summary.html");
    WholeFile.write(page, DayPage.html(summary, Version.number(), words));
    return page;
  }

  /** Makes the picture of a pair if both photos are still what they were. */
  private void picture(BeforeAfter pair) {
    if (pair.changes().isEmpty()) {
      return;
    }
    Scoring before = record.scoring(pair.before().scoring());
    Scoring after = record.scoring(pair.after().scoring());
    Optional<Photo> one = open(before);
    Optional<Photo> two = open(after);
    try {
      if (one.isPresent() && two.isPresent()) {
        String title =
            RecordLines.printable(
                pair.after().subject().job()
                    + ", "
                    + RecordWords.board(words, pair.after().subject().board()));
        byte[] png =
            ComparedRows.png(
                title,
                shown(pair.before(), before, one.get()),
                shown(pair.after(), after, two.get()),
                pair.changes().stream().map(PinChange::kind).map(kind -> kind.word(words)).toList(),
                pair.words(words),
                new PictureWords(words));
        WholeFile.write(folder.resolve(pair.picture()), png);
      }
    } finally {
      one.ifPresent(Photo::close);
      two.ifPresent(Photo::close);
    }
  }

  private static Optional<Photo> open(Scoring scoring) {
    try {
      return Hash.sha256(scoring.photoPath()).equals(scoring.photo().sha256())
          ? Optional.of(new PhotoReader().read(scoring.photoPath()))
          : Optional.empty();
    } catch (IOException | UserError e) {
      return Optional.empty();
    }
  }

  private ShownRow shown(PhotoLine line, Scoring scoring, Photo photo) {
    RecordedRow row = record.row(scoring.id());
    List<GradedJoint> joints = row.standing();
    return new ShownRow(
        RecordWords.stage(words, line.subject()) + ", " + RecordLines.printable(line.file()),
        scoring.method().settings().row(),
        (RowOutcome.Found) row.outcome(),
        joints,
        photo.frame());
  }
}
