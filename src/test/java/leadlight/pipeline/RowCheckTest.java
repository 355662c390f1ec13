package leadlight.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.RowSpec;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.trial.Comparison;
import leadlight.trial.PhotoOutcome;
import leadlight.trial.RowResult;
import leadlight.trial.TrialPhoto;
import leadlight.trial.TruthFolder;
import org.junit.jupiter.api.Test;

/** The picture is a scene in which bare laminate between the lands looks more like leads do. */
class RowCheckTest {

  private static final Path FOLDER = Path.of("src/test/resources/leadlight/pipeline");

  private static PhotoOutcome outcome(Opinions opinions) {
    TrialPhoto trial = TruthFolder.read(FOLDER).get(0);
    var truth = trial.truth().orElseThrow();
    RowSpec row =
        ConnectorLibrary.builtIn()
            .find(truth.connector().orElseThrow())
            .rowSpec(0, OptionalInt.of(truth.leads()));
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    Settings settings = new Settings(row, 2, limits.id(), Optional.empty(), opinions);
    try (Photo photo = new PhotoReader().read(trial.file())) {
      ScoredPhoto scored = new PhotoScorer(settings, limits).score(photo);
      return Comparison.of(truth, scored);
    }
  }

  @Test
  void aRowThatShowsNoJointsIsLookedForHalfAPitchAside() {
    assertThat(outcome(Opinions.MEASURES).row()).isEqualTo(RowResult.WRONG);
    assertThat(outcome(Opinions.BOTH).row()).isEqualTo(RowResult.RIGHT);
  }
}
