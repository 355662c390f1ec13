package leadlight.together;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.truth.JointTruth;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import leadlight.vision.Threads;

/**
 * The signals of each joint of pairs NAME-before, NAME-after, for {@code
 * models/motion/fit-change.py}: pair, lamp, pixels a pitch, likeness, pin, condition, signals.
 *
 * <pre>
 * mvn -q test-compile exec:java -Dexec.classpathScope=test \
 *   -Dexec.mainClass=leadlight.together.ChangeTable -Dexec.args="FOLDER" &gt; signals.csv
 * </pre>
 */
public final class ChangeTable {

  private ChangeTable() {}

  /** Prints the table of a folder. */
  public static void main(String[] args) {
    Threads.set(1);
    for (TrialPhoto trial : TruthFolder.read(Path.of(args[0]))) {
      if (trial.truth().isPresent() && trial.file().toString().contains("-after")) {
        print(trial);
      }
    }
  }

  private static void print(TrialPhoto trial) {
    PhotoTruth truth = trial.truth().orElseThrow();
    RowSpec spec =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    PhotoScorer scorer =
        new PhotoScorer(new Settings(spec, 2, limits.id(), Optional.empty()), limits);
    String name = trial.file().getFileName().toString();
    Path before = trial.file().resolveSibling(name.replace("-after", "-before"));
    try (Photo now = new PhotoReader().read(trial.file());
        Photo then = new PhotoReader().read(before)) {
      var scored = scorer.score(now);
      if (scored.row() instanceof RowOutcome.Found row
          && scorer.score(then).row() instanceof RowOutcome.Found thenRow
          && Comparison.of(truth, scored).row() == RowResult.RIGHT) {
        Placed.Compared compared =
            new Placed().compare(now.frame(), row, then.frame(), thenRow, spec);
        if (compared.oneRow()) {
          print(name, truth, row.pitchPx(), compared);
        }
      }
    }
  }

  private static void print(
      String name, PhotoTruth truth, double pitchPx, Placed.Compared compared) {
    for (JointTruth joint : truth.joints()) {
      String signals =
          DoubleStream.of(compared.signals().get(joint.pin() - 1))
              .mapToObj(Double::toString)
              .collect(Collectors.joining(","));
      System.out.println(
          String.join(
              ",",
              name,
              truth.lamp(),
              Double.toString(pitchPx),
              Double.toString(compared.likeness()),
              Integer.toString(joint.pin()),
              joint.condition(),
              signals));
    }
  }
}
