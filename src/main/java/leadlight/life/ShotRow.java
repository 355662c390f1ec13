package leadlight.life;

import java.util.Optional;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.record.said.RecordedRow;
import leadlight.record.scoring.Scoring;
import leadlight.report.strip.MarkedRow;
import leadlight.report.strip.ShownRow;

/** The row of a recorded photo with its pins marked by what stands, for a board's timeline. */
public final class ShotRow {

  /** As wide as a page shows it on a common screen. */
  private static final int WIDTH_PX = 1200;

  private ShotRow() {}

  /** The picture, if a row was found and the photo is still what it was. */
  public static Optional<MarkedRow.Picture> of(PhotoShelf shelf, Scoring scoring, RecordedRow row) {
    if (!(row.outcome() instanceof RowOutcome.Found found)) {
      return Optional.empty();
    }
    Optional<Photo> open = shelf.open(scoring);
    try {
      return open.map(photo -> marked(scoring, row, found, photo));
    } finally {
      open.ifPresent(Photo::close);
    }
  }

  private static MarkedRow.Picture marked(
      Scoring scoring, RecordedRow row, RowOutcome.Found found, Photo photo) {
    ShownRow shown =
        new ShownRow("", scoring.method().settings().row(), found, row.standing(), photo.frame());
    return MarkedRow.jpeg(shown, WIDTH_PX);
  }
}
