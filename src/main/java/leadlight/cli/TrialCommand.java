package leadlight.cli;

import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import leadlight.grade.AcceptanceSet;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.Comparison;
import leadlight.trial.MeasuresCsv;
import leadlight.trial.PhotoOutcome;
import leadlight.trial.PhotoTruth;
import leadlight.trial.TrialPhoto;
import leadlight.trial.TrialSummary;
import leadlight.trial.TrialTable;
import leadlight.trial.TruthFolder;
import leadlight.trial.TruthRow;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight trial}: how right Leadlight is on photos with truth. */
@Command(
    name = "trial",
    description = "Scores photos with truth files and says how right that was.",
    mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {

  /** Truth files state class 2. */
  private static final int TRUE_CLASS = 2;

  private final Streams streams;

  @Parameters(paramLabel = "FOLDER", description = "Photos with *.truth.json or *.row.json files.")
  private Path folder;

  @Option(
      names = "--truth-positions",
      description = "Give the true row to the joints, to tell their errors from the row's.")
  private boolean truthPositions;

  @Option(
      names = "--measures",
      paramLabel = "FILE.csv",
      description = "Write truth, verdict and all numbers of each joint.")
  private Path measures;

  @Mixin private Threads threads;

  @Mixin private Limits limits;

  TrialCommand(Streams streams) {
    this.streams = streams;
  }

  private record Done(PhotoOutcome outcome, List<Map<String, Double>> features) {}

  @Override
  public Integer call() {
    List<TrialPhoto> photos =
        TruthFolder.read(folder).stream().filter(photo -> photo.truth().isPresent()).toList();
    List<PhotoOutcome> outcomes = new ArrayList<>();
    MeasuresCsv csv = new MeasuresCsv();
    InOrder.each(
        photos,
        threads.count(),
        this::one,
        done -> {
          outcomes.add(done.outcome());
          csv.add(done.outcome(), done.features());
          progress(outcomes.size(), photos.size());
        });
    if (measures != null) {
      write(csv);
    }
    streams.out().print(TrialTable.of(TrialSummary.of(outcomes)));
    return ExitStatus.GOOD.code();
  }

  private Done one(TrialPhoto trial) {
    PhotoTruth truth = trial.truth().orElseThrow();
    RowSpec spec =
        RowSpec.plain(
            truth.leads(), truth.pitchMm(), OptionalDouble.empty(), OptionalDouble.empty());
    AcceptanceSet set = limits.load();
    PhotoScorer scorer =
        new PhotoScorer(new Settings(spec, TRUE_CLASS, set.id(), Optional.empty()), set);
    try (Photo photo = new PhotoReader().read(trial.file())) {
      ScoredPhoto scored =
          truthPositions ? scorer.score(photo, TruthRow.of(truth)) : scorer.score(photo);
      List<Map<String, Double>> features =
          measures != null && scored.row() instanceof RowOutcome.Found found
              ? scorer.features(photo, found)
              : scored.joints().stream().map(joint -> Map.<String, Double>of()).toList();
      return new Done(Comparison.of(truth, scored), features);
    }
  }

  private void progress(int done, int of) {
    if (streams.interactive()) {
      streams.err().print("\r" + done + "/" + of + (done == of ? "\n" : ""));
    }
  }

  private void write(MeasuresCsv csv) {
    try (Writer to = Files.newBufferedWriter(measures)) {
      csv.write(to);
    } catch (IOException e) {
      throw new UserError(measures + ": cannot be written; check the folder");
    }
  }
}
