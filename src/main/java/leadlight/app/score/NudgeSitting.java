package leadlight.app.score;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.Nudge;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.motion.NudgeJudge;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.together.NudgeJoin;

/** A row at rest, and photos of its pushed leads as they come. */
public final class NudgeSitting implements AutoCloseable {

  private final Photo rest;
  private final ScoredPhoto alone;
  private final RowOutcome.Found row;
  private final AcceptanceSet limits;
  private final NudgeJudge reader;
  private final List<NudgeJudge.Read> reads = new ArrayList<>();

  private NudgeSitting(PhotoScorer.Open open, RowOutcome.Found row, AcceptanceSet limits) {
    this.rest = open.photo();
    this.alone = open.scored();
    this.row = row;
    this.limits = limits;
    this.reader = new NudgeJudge(rest.frame(), row, alone.settings().row());
  }

  /**
   * Scores the photo at rest, which stays open.
   *
   * @throws UserError if it cannot be used, or shows no row
   */
  public static NudgeSitting at(Path restFile, Settings settings, AcceptanceSet limits) {
    PhotoScorer scorer = new PhotoScorer(settings, limits);
    PhotoScorer.Open open = PhotoScorer.open(restFile, () -> scorer);
    try {
      if (open.scored().row() instanceof RowOutcome.Found row) {
        return new NudgeSitting(open, row, limits);
      }
      throw new UserError(
          restFile + ": no row was found in the photo at rest; see leadlight score for why");
    } catch (RuntimeException | Error e) {
      open.close();
      throw e;
    }
  }

  /** The photo at rest by itself. */
  public ScoredPhoto alone() {
    return alone;
  }

  /**
   * Reads one more photo.
   *
   * @throws UserError if it is no fit picture
   */
  public NudgeJudge.Read add(Path file) {
    try (Photo photo = new Deadline().read(file)) {
      NudgeJudge.Read read = reader.read(photo.frame(), photo.info().file(), photo.info().sha256());
      reads.add(read);
      return read;
    }
  }

  /** What all photos so far say; its photo is closed with this. */
  public NudgeRun.Result result() {
    Nudge nudge = reader.together(reads);
    return new NudgeRun.Result(rest, row, alone, NudgeJoin.of(alone, nudge, limits), nudge);
  }

  @Override
  public void close() {
    rest.close();
  }
}
