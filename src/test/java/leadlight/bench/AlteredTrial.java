package leadlight.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import org.opencv.core.Mat;
import org.opencv.imgcodecs.Imgcodecs;

/**
 * Alters a picture, scores it from a file as a user would, and sets the result beside the truth.
 */
final class AlteredTrial {

  /**
   * What came of it.
   *
   * @param outcome by the rules of a trial
   * @param scored what Leadlight said
   */
  record Result(PhotoOutcome outcome, ScoredPhoto scored) {}

  private AlteredTrial() {}

  static Result run(TrialPhoto trial, Alteration alteration, Opinions opinions, Path scratch)
      throws IOException {
    PhotoTruth truth = trial.truth().orElseThrow();
    Path file = Files.createTempFile(scratch, "altered-", ".png");
    // Reading once by Leadlight has the native library loaded in Leadlight's own way.
    new PhotoReader().read(trial.file()).close();
    Mat picture = Imgcodecs.imread(trial.file().toString());
    Alteration.Altered altered = alteration.alter().of(picture, truth);
    Imgcodecs.imwrite(file.toString(), altered.picture());
    picture.release();
    altered.picture().release();
    try (Photo photo = new PhotoReader().read(file)) {
      ScoredPhoto scored = scorer(truth, opinions).score(photo);
      return new Result(Comparison.of(altered.truth(), scored), scored);
    } finally {
      Files.delete(file);
    }
  }

  private static PhotoScorer scorer(PhotoTruth truth, Opinions opinions) {
    RowSpec row =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    return new PhotoScorer(new Settings(row, 2, limits.id(), Optional.empty(), opinions), limits);
  }
}
