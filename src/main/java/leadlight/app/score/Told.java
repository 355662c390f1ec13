package leadlight.app.score;

import java.nio.file.Path;
import leadlight.model.UserError;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.record.scoring.Subject;
import leadlight.report.WrittenReport;

/** What became of a photo that was to be scored, told as soon as it is known. */
public sealed interface Told {

  /**
   * Scored, and its results written.
   *
   * @param besides what other photos had to do with it
   */
  record Reported(ScoredPhoto scored, Besides besides, WrittenReport files) implements Told {}

  /** The same, and entered into the record under a number. */
  record Recorded(Reported report, long scoring, Subject subject) implements Told {}

  /**
   * Scored, and its results written beside those that the record has proven.
   *
   * @param proven folder of those, which stay as they are
   */
  record Beside(Reported report, Path proven) implements Told {}

  /** It cannot be used; the others go on. */
  record Refused(UserError why) implements Told {}

  /** A fault of ours; the others go on. */
  record Failed(Path photo, Throwable fault) implements Told {}
}
