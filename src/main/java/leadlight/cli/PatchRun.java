package leadlight.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import leadlight.grade.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;
import leadlight.model.SolderChances;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.PictureFiles;
import leadlight.trial.Comparison;
import leadlight.trial.MeasuresCsv;
import leadlight.trial.NoteComparison;
import leadlight.trial.TrialPhoto;
import leadlight.vision.Threads;

/**
 * Cuts the joints of photos with truth, at the places where Leadlight itself finds them, and writes
 * down the truth and the measures' chances of each.
 */
final class PatchRun {

  private final AcceptanceSet limits;
  private final PictureFiles pictures;
  private final MeasuresCsv joints = new MeasuresCsv();

  PatchRun(AcceptanceSet limits, PictureFiles pictures) {
    this.limits = limits;
    this.pictures = pictures;
  }

  /** Cuts all; {@code progress} hears how many photos are done. */
  void cut(List<TrialPhoto> photos, int threads, IntConsumer progress) {
    Threads.set(1);
    int[] done = {0};
    InOrder.each(
        photos,
        threads,
        this::one,
        gather -> {
          gather.run();
          progress.accept(++done[0]);
        });
  }

  /** Truth and chances, one line a joint, in the order of the pictures. */
  MeasuresCsv joints() {
    return joints;
  }

  private Runnable one(TrialPhoto trial) {
    try (Photo photo = new PhotoReader().read(trial.file())) {
      PhotoScorer scorer = TrialRun.scorer(TrialRun.row(trial), limits, Opinions.MEASURES);
      ScoredPhoto scored = scorer.score(photo);
      if (!(scored.row() instanceof RowOutcome.Found found)) {
        return () -> {};
      }
      var cut = scorer.pictures(photo, found);
      return () -> {
        pictures.add(cut);
        note(trial, scored);
      };
    }
  }

  private void note(TrialPhoto trial, ScoredPhoto scored) {
    List<Map<String, Double>> chances = new ArrayList<>();
    scored
        .joints()
        .forEach(joint -> chances.add(columns(joint.joint().byMeasures().orElseThrow())));
    if (trial.truth().isPresent()) {
      joints.add(Comparison.of(trial.truth().get(), scored), chances);
    } else {
      joints.add(NoteComparison.of(trial.note().orElseThrow(), scored), chances);
    }
  }

  private static Map<String, Double> columns(SolderChances chances) {
    Map<String, Double> columns = new LinkedHashMap<>();
    columns.put("m_missing", chances.missing());
    columns.put("m_unwetted", chances.unwetted());
    columns.put("m_open", chances.open());
    columns.put("m_excess", chances.excess());
    columns.put("m_bridge_before", chances.bridgeBefore());
    columns.put("m_bridge_after", chances.bridgeAfter());
    return columns;
  }
}
