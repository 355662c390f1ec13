package leadlight.app.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.joint.Joint;
import leadlight.model.picture.RowPictures;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.PictureFiles;
import leadlight.rowcheck.StrayRow;
import leadlight.trial.list.MeasuresCsv;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.NoteComparison;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.TrialPhoto;
import leadlight.vision.Threads;

/**
 * Cuts the joints of photos with truth, at the places where Leadlight itself finds them, and writes
 * down the truth and the measures' chances of each.
 */
public final class PatchRun {

  /** One row of so many is cut astray too: about a fifth of the joints are then none. */
  private static final int EACH = 4;

  private final AcceptanceSet limits;
  private final PictureFiles pictures;
  private final boolean astray;
  private final MeasuresCsv joints = new MeasuresCsv();

  /**
   * Takes where pictures go.
   *
   * @param astray whether to cut rows at wrong places too
   */
  public PatchRun(AcceptanceSet limits, PictureFiles pictures, boolean astray) {
    this.limits = limits;
    this.pictures = pictures;
    this.astray = astray;
  }

  /** Cuts all; {@code progress} hears how many photos are done. */
  public void cut(List<TrialPhoto> photos, int threads, IntConsumer progress) {
    Threads.set(1);
    int[] done = {0};
    InOrder.each(
        IntStream.range(0, photos.size()).boxed().toList(),
        threads,
        number -> one(photos.get(number), number),
        gather -> {
          gather.run();
          progress.accept(++done[0]);
        });
  }

  /** Truth and chances, one line a joint, in the order of the pictures. */
  public MeasuresCsv joints() {
    return joints;
  }

  private Runnable one(TrialPhoto trial, int number) {
    try (Photo photo = new PhotoReader().read(trial.file())) {
      PhotoScorer scorer =
          TrialRun.scorer(TrialRun.row(trial), limits, Optional.empty(), Opinions.MEASURES);
      ScoredPhoto scored = scorer.score(photo);
      if (!(scored.row() instanceof RowOutcome.Found found)) {
        return () -> {};
      }
      RowPictures cut = scorer.pictures(photo, found);
      Optional<RowPictures> stray =
          astray && trial.truth().isPresent() && number % EACH == 0
              ? Optional.of(scorer.pictures(photo, StrayRow.of(found, number / EACH)))
              : Optional.empty();
      return () -> note(trial, scored, cut, stray);
    }
  }

  private void note(
      TrialPhoto trial, ScoredPhoto scored, RowPictures cut, Optional<RowPictures> stray) {
    List<Map<String, Double>> chances = new ArrayList<>();
    scored.joints().forEach(joint -> chances.add(OpinionColumns.of(joint.joint())));
    pictures.add(cut);
    if (trial.truth().isPresent()) {
      PhotoOutcome outcome = Comparison.of(trial.truth().get(), scored);
      joints.add(outcome, chances);
      if (stray.isPresent() && outcome.row() == RowResult.RIGHT) {
        pictures.add(stray.get());
        joints.add(outcome.as(RowResult.WRONG), chances);
      }
    } else {
      joints.add(
          NoteComparison.of(
              trial.note().orElseThrow(),
              scored,
              PatchRun::notHeld,
              joint -> notHeld(joint.joint())),
          chances);
    }
  }

  private static double notHeld(Joint joint) {
    return joint.byMeasures().orElseThrow().notHeld();
  }
}
