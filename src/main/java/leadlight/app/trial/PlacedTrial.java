package leadlight.app.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.Besides;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.together.JoinedRow;
import leadlight.together.PlacedJoin;
import leadlight.trial.sets.PlacedTally;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import leadlight.vision.Threads;

/** Counts pairs NAME-before, NAME-after: what is open after was left as it was set down. */
public final class PlacedTrial {

  private static final String AFTER = "-after";
  private static final String BEFORE = "-before";

  private PlacedTrial() {}

  public static List<String> lines(Path folder, AcceptanceSet limits) {
    Threads.set(1);
    PlacedTally tally = new PlacedTally();
    for (TrialPhoto trial : TruthFolder.read(folder)) {
      if (trial.truth().isPresent() && trial.file().getFileName().toString().contains(AFTER)) {
        count(trial, limits, tally);
      }
    }
    return tally.lines();
  }

  private static void count(TrialPhoto trial, AcceptanceSet limits, PlacedTally tally) {
    Path before =
        trial.file().resolveSibling(trial.file().getFileName().toString().replace(AFTER, BEFORE));
    PhotoScorer scorer =
        TrialRun.scorer(TrialRun.row(trial), limits, Optional.empty(), Opinions.BOTH);
    try (Photo after = new PhotoReader().read(trial.file());
        Photo placed = new PhotoReader().read(before)) {
      JoinedRow.View now = new JoinedRow.View(after.frame(), scorer.score(after));
      JoinedRow.View then = new JoinedRow.View(placed.frame(), scorer.score(placed));
      JoinedRow.Result result = new PlacedJoin(limits).of(now, then);
      Besides.Other other = result.besides().photos().get(0);
      tally.add(
          trial.truth().orElseThrow(),
          result.scored(),
          result.besides(),
          other.refused().map(why -> why.code()).orElse(""));
    }
  }
}
