package leadlight.app.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.together.Burst;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.sets.BurstTally;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.TrialPhoto;
import leadlight.vision.Threads;

/** Counts bursts: frames NAME-a, NAME-b ... of one row, each by itself and all stacked. */
public final class BurstTrial {

  private BurstTrial() {}

  public static List<String> lines(Path folder, AcceptanceSet limits, int threads) {
    Threads.set(1);
    BurstTally tally = new BurstTally();
    InOrder.each(
        List.copyOf(SameRowTrial.rows(folder).entrySet()),
        threads,
        row -> stacked(row, limits),
        tally::add);
    return tally.lines();
  }

  private static BurstTally.Row stacked(
      Map.Entry<String, List<TrialPhoto>> row, AcceptanceSet limits) {
    List<Photo> open = new ArrayList<>();
    try {
      List<PhotoOutcome> alone = new ArrayList<>();
      List<Burst.Shot> shots = new ArrayList<>();
      PhotoScorer scorer =
          TrialRun.scorer(
              TrialRun.row(row.getValue().get(0)), limits, Optional.empty(), Opinions.BOTH);
      for (TrialPhoto trial : row.getValue()) {
        Photo photo = new PhotoReader().read(trial.file());
        open.add(photo);
        shots.add(new Burst.Shot(photo.info(), photo.frame()));
        alone.add(Comparison.of(trial.truth().orElseThrow(), scorer.score(photo)));
      }
      return stacked(row, alone, shots, scorer);
    } finally {
      open.forEach(Photo::close);
    }
  }

  private static BurstTally.Row stacked(
      Map.Entry<String, List<TrialPhoto>> row,
      List<PhotoOutcome> alone,
      List<Burst.Shot> shots,
      PhotoScorer scorer) {
    try (Burst.Result result =
        new Burst().of(shots, (info, frame) -> scorer.score(new Photo(info, frame, List.of())))) {
      PhotoTruth truth = truth(row.getValue(), result.scored().photo().file());
      int refused =
          (int) result.besides().photos().stream().filter(o -> o.refused().isPresent()).count();
      return new BurstTally.Row(
          row.getKey(),
          alone,
          Optional.of(Comparison.of(truth, result.alone())),
          Optional.of(Comparison.of(truth, result.scored())),
          refused);
    } catch (UserError e) {
      return new BurstTally.Row(row.getKey(), alone, Optional.empty(), Optional.empty(), 0);
    }
  }

  private static PhotoTruth truth(List<TrialPhoto> row, String file) {
    return row.stream()
        .filter(trial -> trial.file().getFileName().toString().equals(file))
        .flatMap(trial -> trial.truth().stream())
        .findFirst()
        .orElseThrow();
  }
}
