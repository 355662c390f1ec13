package leadlight.rowcheck;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.joint.JointMeter;
import leadlight.model.Opinions;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.pipeline.RowReading;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import leadlight.trial.truth.TruthRow;

/** A scene among the test pictures, with its truth. */
record RowScene(TrialPhoto picture) {

  private static final Path FOLDER = Path.of("src/test/resources/leadlight/pipeline");
  private static final AcceptanceSet LIMITS = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);

  static RowScene named(String name) {
    return TruthFolder.read(FOLDER).stream()
        .filter(picture -> picture.file().getFileName().toString().equals(name + ".jpg"))
        .map(RowScene::new)
        .findFirst()
        .orElseThrow();
  }

  PhotoTruth truth() {
    return picture.truth().orElseThrow();
  }

  /** What the row is worth that is found. */
  RowResult row(Opinions opinions) {
    try (Photo photo = photo()) {
      PhotoScorer scorer = new PhotoScorer(settings(spec(0), opinions), LIMITS);
      return Comparison.of(truth(), scorer.score(photo)).row();
    }
  }

  /** What is found by who says that there are more leads. */
  RowOutcome toldMore(int more) {
    try (Photo photo = photo()) {
      return new PhotoScorer(settings(spec(more), Opinions.BOTH), LIMITS).score(photo).row();
    }
  }

  /** How far pin 1 is from its true place, pitches, once the row has been counted anew. */
  double offInStep(RowOutcome.Found row) {
    return with(
        (photo, count) -> {
          RowOutcome.Found inStep = count.inStep(photo, row);
          return inStep.leads().get(0).toePx().distanceTo(trueRow().leads().get(0).toePx())
              / row.pitchPx();
        });
  }

  /** The same of the row that is scored in the end, if one is found there. */
  double offWhenScored(RowOutcome.Found row) {
    try (Photo photo = photo()) {
      RowOutcome scored =
          new RowReading(settings(spec(0), Opinions.BOTH), new JointMeter()).inPlace(photo, row);
      return ((RowOutcome.Found) scored)
              .leads()
              .get(0)
              .toePx()
              .distanceTo(trueRow().leads().get(0).toePx())
          / row.pitchPx();
    }
  }

  boolean endsAtItsEnds(RowOutcome.Found row) {
    return with((photo, count) -> count.endsAtItsEnds(photo, row));
  }

  private <T> T with(BiFunction<Photo, FirstPin, T> look) {
    try (Photo photo = photo()) {
      RowEye eye = new RowEye(new JointMeter(), settings(spec(0), Opinions.BOTH));
      return look.apply(photo, new FirstPin(eye));
    }
  }

  RowOutcome.Found trueRow() {
    return TruthRow.of(truth());
  }

  private Photo photo() {
    return new PhotoReader().read(picture.file());
  }

  private static Settings settings(RowSpec spec, Opinions opinions) {
    return new Settings(spec, 2, LIMITS.id(), Optional.empty(), opinions);
  }

  private RowSpec spec(int more) {
    int leads = truth().leads() + more;
    return truth()
        .connector()
        .map(id -> ConnectorLibrary.builtIn().find(id).rowSpec(0, OptionalInt.of(leads)))
        .orElseGet(
            () ->
                RowSpec.plain(
                    leads, truth().pitchMm(), OptionalDouble.empty(), OptionalDouble.empty()));
  }
}
