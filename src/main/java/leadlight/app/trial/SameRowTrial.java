package leadlight.app.trial;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.ScoredPhoto;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.together.JoinedRow;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.sets.SameRowTally;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthFolder;
import leadlight.vision.Threads;

/** Counts rows that were photographed several times: NAME-a, NAME-b ... */
public final class SameRowTrial {

  private SameRowTrial() {}

  public static List<String> lines(Path folder, AcceptanceSet limits, int threads) {
    Threads.set(1);
    SameRowTally tally = new SameRowTally();
    InOrder.each(
        List.copyOf(rows(folder).entrySet()),
        threads,
        row -> joined(row.getKey(), row.getValue(), limits),
        said -> said.forEach(one -> one.accept(tally)));
    return tally.lines();
  }

  /** Photos with truth by the row that they are of, NAME of NAME-a. */
  static Map<String, List<TrialPhoto>> rows(Path folder) {
    Map<String, List<TrialPhoto>> rows = new LinkedHashMap<>();
    for (TrialPhoto photo : TruthFolder.read(folder)) {
      String name = photo.file().getFileName().toString();
      if (photo.truth().isPresent() && name.lastIndexOf('-') > 0) {
        rows.computeIfAbsent(name.substring(0, name.lastIndexOf('-')), key -> new ArrayList<>())
            .add(photo);
      }
    }
    return rows;
  }

  /** What is to be counted of a row. */
  private static List<Consumer<SameRowTally>> joined(
      String name, List<TrialPhoto> row, AcceptanceSet limits) {
    List<Consumer<SameRowTally>> said = new ArrayList<>();
    List<Photo> open = new ArrayList<>();
    try {
      List<JoinedRow.View> views = new ArrayList<>();
      List<PhotoOutcome> alone = new ArrayList<>();
      for (TrialPhoto trial : row) {
        Photo photo = new PhotoReader().read(trial.file());
        open.add(photo);
        ScoredPhoto scored =
            TrialRun.scorer(TrialRun.row(trial), limits, Optional.empty(), Opinions.BOTH)
                .score(photo);
        views.add(new JoinedRow.View(photo.frame(), scored));
        alone.add(Comparison.of(trial.truth().orElseThrow(), scored));
      }
      JoinedRow joiner = new JoinedRow(limits);
      for (int first = 0; first < row.size(); first++) {
        for (int photos = 2; photos <= row.size(); photos++) {
          List<JoinedRow.View> some = new ArrayList<>();
          for (int k = 0; k < photos; k++) {
            some.add(views.get((first + k) % row.size()));
          }
          JoinedRow.Result result = joiner.of(some);
          int refused =
              (int) result.besides().photos().stream().filter(o -> o.refused().isPresent()).count();
          int count = photos;
          PhotoOutcome outcome =
              Comparison.of(row.get(first).truth().orElseThrow(), result.scored());
          said.add(tally -> tally.joined(name, count, outcome, alone, refused));
        }
      }
      alone.forEach(one -> said.add(tally -> tally.alone(name, one)));
      return said;
    } finally {
      open.forEach(Photo::close);
    }
  }
}
