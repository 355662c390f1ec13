package leadlight.app.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntConsumer;
import leadlight.connector.ConnectorLibrary;
import leadlight.enrol.Bench;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Deadline;
import leadlight.photo.Photo;
import leadlight.pipeline.InOrder;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.list.MeasuresCsv;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.NoteComparison;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.truth.PhotoTruth;
import leadlight.trial.truth.RowNote;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TruthRow;
import leadlight.vision.Threads;

/** Scores the photos of a trial and gathers what that was worth, in the order of the photos. */
public final class TrialRun {

  /** Truth files state class 2. */
  static final int TRUE_CLASS = 2;

  /** The connector of the unevenly pitched rows, which a number and a pitch cannot tell. */
  private static final String UNEVEN = "usb-c-16";

  private final AcceptanceSet limits;
  private final boolean truePositions;
  private final boolean withFeatures;
  private final Optional<RowHint> hint;
  private final Opinions opinions;
  private final Optional<Bench> bench;
  private final List<PhotoOutcome> outcomes = new ArrayList<>();
  private final List<NoteOutcome> notes = new ArrayList<>();
  private final MeasuresCsv measures = new MeasuresCsv();
  private final SlipSheets sheets = new SlipSheets();

  /**
   * Takes what the photos have in common.
   *
   * @param truePositions give the true row to the joints, where the truth is exact
   * @param withFeatures keep the numbers of each joint
   * @param hint where the rows lie, as a person says
   * @param opinions whose opinion decides
   * @param bench the enrolled bench that the photos come from, if one was named
   */
  public TrialRun(
      AcceptanceSet limits,
      boolean truePositions,
      boolean withFeatures,
      Optional<RowHint> hint,
      Opinions opinions,
      Optional<Bench> bench) {
    this.bench = bench;
    this.limits = limits;
    this.truePositions = truePositions;
    this.withFeatures = withFeatures;
    this.hint = hint;
    this.opinions = opinions;
  }

  /** Scores all; {@code progress} hears how many are done. */
  public void score(List<TrialPhoto> photos, int threads, IntConsumer progress) {
    Threads.set(1);
    InOrder.each(
        photos,
        threads,
        this::one,
        gather -> {
          gather.run();
          progress.accept(outcomes.size() + notes.size());
        });
  }

  public List<PhotoOutcome> outcomes() {
    return outcomes;
  }

  public List<NoteOutcome> notes() {
    return notes;
  }

  public SlipSheets sheets() {
    return sheets;
  }

  public MeasuresCsv measures() {
    return measures;
  }

  /** Scores one photo; what is given back adds the result to the rest. */
  private Runnable one(TrialPhoto trial) {
    return new Deadline()
        .reading(
            trial.file(),
            photo ->
                trial.truth().isPresent()
                    ? withTruth(trial.truth().get(), photo)
                    : withNote(trial.note().orElseThrow(), photo));
  }

  private Runnable withTruth(PhotoTruth truth, Photo photo) {
    PhotoScorer scorer = scorer(row(truth));
    ScoredPhoto scored =
        truePositions ? scorer.score(photo, TruthRow.of(truth)) : scorer.score(photo);
    PhotoOutcome outcome = Comparison.of(truth, scored);
    List<Map<String, Double>> features = features(scorer, photo, scored);
    List<SlipSheets.Tile> tiles = SlipSheets.tiles(outcome, photo.frame());
    return () -> {
      outcomes.add(outcome);
      sheets.addAll(tiles);
      measures.add(outcome, features);
    };
  }

  /** One map a joint, opinions first; empty maps if the numbers are not asked for. */
  private List<Map<String, Double>> features(PhotoScorer scorer, Photo photo, ScoredPhoto scored) {
    if (!withFeatures || !(scored.row() instanceof RowOutcome.Found found)) {
      return Collections.nCopies(scored.joints().size(), Map.of());
    }
    List<Map<String, Double>> features = scorer.features(photo, found);
    List<Map<String, Double>> all = new ArrayList<>();
    for (int i = 0; i < features.size(); i++) {
      Map<String, Double> columns = OpinionColumns.of(scored.joints().get(i).joint());
      columns.putAll(features.get(i));
      all.add(columns);
    }
    return all;
  }

  private Runnable withNote(RowNote note, Photo photo) {
    PhotoScorer scorer = scorer(row(note));
    ScoredPhoto scored = scorer.score(photo);
    NoteOutcome outcome =
        NoteComparison.of(
            note, scored, joint -> scorer.combined(joint).notHeld(), scorer::suspicion);
    List<Map<String, Double>> features = features(scorer, photo, scored);
    List<SlipSheets.Tile> tiles = SlipSheets.tiles(outcome, photo.frame());
    return () -> {
      notes.add(outcome);
      sheets.addAll(tiles);
      measures.add(outcome, features);
    };
  }

  /** The row that a user would ask for. */
  static RowSpec row(TrialPhoto trial) {
    return trial.truth().map(TrialRun::row).orElseGet(() -> row(trial.note().orElseThrow()));
  }

  private static RowSpec row(PhotoTruth truth) {
    return truth
        .connector()
        .map(id -> ConnectorLibrary.builtIn().find(id))
        .map(known -> known.rowSpec(0, OptionalInt.of(truth.leads())))
        .orElseGet(() -> plain(truth.leads(), truth.pitchMm()));
  }

  private static RowSpec row(RowNote note) {
    return note.uneven()
        ? ConnectorLibrary.builtIn().find(UNEVEN).rowSpec(0, OptionalInt.empty())
        : plain(note.leads(), note.pitchMm());
  }

  private static RowSpec plain(int leads, double pitchMm) {
    return RowSpec.plain(leads, pitchMm, OptionalDouble.empty(), OptionalDouble.empty());
  }

  private PhotoScorer scorer(RowSpec row) {
    Settings settings = new Settings(row, TRUE_CLASS, limits.id(), hint, opinions);
    return new PhotoScorer(settings, limits, bench);
  }

  static PhotoScorer scorer(
      RowSpec row, AcceptanceSet limits, Optional<RowHint> hint, Opinions opinions) {
    Settings settings = new Settings(row, TRUE_CLASS, limits.id(), hint, opinions);
    return new PhotoScorer(settings, limits);
  }
}
