package leadlight.app.trial;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.remark.Note;
import leadlight.model.result.Besides;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
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

  public static List<String> lines(Path folder, AcceptanceSet limits, int threads) {
    Threads.set(1);
    PlacedTally tally = new PlacedTally();
    List<TrialPhoto> after =
        TruthFolder.read(folder).stream()
            .filter(photo -> photo.truth().isPresent())
            .filter(photo -> photo.file().getFileName().toString().contains(AFTER))
            .toList();
    InOrder.each(after, threads, trial -> compared(trial, limits), pair -> pair.addTo(tally));
    return tally.lines();
  }

  /** What was said of a pair. */
  private record Pair(TrialPhoto trial, JoinedRow.Result result) {

    void addTo(PlacedTally tally) {
      Besides.Other other = result.besides().photos().get(0);
      tally.add(
          trial.truth().orElseThrow(),
          result.scored(),
          result.besides(),
          other.refused().map(Note::code).orElse(""));
    }
  }

  private static Pair compared(TrialPhoto trial, AcceptanceSet limits) {
    Path before =
        trial.file().resolveSibling(trial.file().getFileName().toString().replace(AFTER, BEFORE));
    PhotoScorer scorer =
        TrialRun.scorer(TrialRun.row(trial), limits, Optional.empty(), Opinions.BOTH);
    try (Photo after = new PhotoReader().read(trial.file());
        Photo placed = new PhotoReader().read(before)) {
      JoinedRow.View now = new JoinedRow.View(after.frame(), scorer.score(after));
      JoinedRow.View then = new JoinedRow.View(placed.frame(), scorer.score(placed));
      return new Pair(trial, new PlacedJoin(limits).of(now, then));
    }
  }
}
