package leadlight.app.score;

import java.nio.file.Path;
import leadlight.life.ProvenResults;
import leadlight.model.result.PhotoInfo;
import leadlight.record.JobRecord;
import leadlight.record.engine.RecordPlace;
import leadlight.report.ReportWriter;

/**
 * Where the results of a photo go that is scored for no job: not over those that a record has
 * proven. The record is opened only where results of the photo lie already.
 */
public record ResultPlace(Path out, RecordPlace record) {

  /** The folder for the results of this photo. */
  public Path of(PhotoInfo photo) {
    if (!ReportWriter.isIn(out, photo) || !JobRecord.isIn(record)) {
      return out;
    }
    try (JobRecord open = JobRecord.open(record)) {
      return ProvenResults.of(open, photo.sha256()).free(out);
    }
  }
}
