package leadlight.pipeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leadlight.grade.AcceptanceSet;
import leadlight.grade.Grader;
import leadlight.joint.JointMeter;
import leadlight.model.GradedJoint;
import leadlight.model.Joint;
import leadlight.model.Opinions;
import leadlight.model.Reading;
import leadlight.model.RowOutcome;
import leadlight.model.RowPictures;
import leadlight.model.ScoredPhoto;
import leadlight.model.Settings;
import leadlight.model.Verdict;
import leadlight.photo.Fitness;
import leadlight.photo.Photo;
import leadlight.photo.PictureFacts;
import leadlight.reader.SecondReader;
import leadlight.row.RowFinder;

/**
 * Scores photos by one set of settings. Holds no state of a photo: safe for use by several threads
 * at once, and the same photo always gives the same result.
 */
public final class PhotoScorer {

  private final Settings settings;
  private final Fitness fitness = new Fitness();
  private final RowFinder finder = new RowFinder();
  private final JointMeter meter = new JointMeter();
  private final Grader grader;
  private final Advice advice = Advice.builtIn();

  /** Takes what is asked for and the limits to judge by. */
  public PhotoScorer(Settings settings, AcceptanceSet limits) {
    this.settings = settings;
    this.grader = new Grader(limits, settings.productClass(), settings.opinions());
  }

  /** Looks for the row, then scores its joints. */
  public ScoredPhoto score(Photo photo) {
    return score(photo, () -> finder.find(photo.frame(), settings.row(), settings.hint()));
  }

  /** Scores the joints of a row that is already known. */
  public ScoredPhoto score(Photo photo, RowOutcome row) {
    return score(photo, () -> row);
  }

  private ScoredPhoto score(Photo photo, Supplier<RowOutcome> finding) {
    // The whole picture is judged beside the row; it must not be closed before that has ended.
    CompletableFuture<PictureFacts> facts =
        CompletableFuture.supplyAsync(() -> fitness.facts(photo.frame()));
    try {
      return score(photo, finding.get(), facts);
    } finally {
      facts.handle((done, trouble) -> done).join();
    }
  }

  private ScoredPhoto score(Photo photo, RowOutcome row, CompletableFuture<PictureFacts> facts) {
    Optional<JointMeter.MeasuredRow> measured =
        row instanceof RowOutcome.Found found
            ? Optional.of(meter.measure(photo.frame(), settings.row(), found))
            : Optional.empty();
    List<GradedJoint> joints =
        measured.map(it -> grader.grade(settings.row(), read(it))).orElse(List.of());
    return new ScoredPhoto(
        photo.info(),
        settings,
        row,
        measured.map(JointMeter.MeasuredRow::view),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        fitness(photo, row, facts.join()),
        advice.notVisible(settings.row()),
        advice.cautions(settings.row(), joints));
  }

  /** The joints with the second reader's opinion, unless the measures alone are asked for. */
  private List<Joint> read(JointMeter.MeasuredRow row) {
    if (settings.opinions() == Opinions.MEASURES) {
      return row.joints();
    }
    List<Reading> readings = SecondReader.builtIn().read(row.pictures());
    List<Joint> joints = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      joints.add(row.joints().get(i).readAs(readings.get(i)));
    }
    return joints;
  }

  private List<String> fitness(Photo photo, RowOutcome row, PictureFacts facts) {
    OptionalDouble pitchPx =
        row instanceof RowOutcome.Found found
            ? OptionalDouble.of(found.pitchPx())
            : OptionalDouble.empty();
    List<String> whatToChange = fitness.advice(facts, pitchPx);
    return Stream.concat(photo.notes().stream(), whatToChange.stream()).toList();
  }

  /** The numbers that the judgement of each joint rests on, pin 1 first, in a fixed order. */
  public List<Map<String, Double>> features(Photo photo, RowOutcome.Found row) {
    return meter.features(photo.frame(), settings.row(), row);
  }

  /** The small pictures of the joints that the second reader looks at. */
  public RowPictures pictures(Photo photo, RowOutcome.Found row) {
    return meter.pictures(photo.frame(), settings.row(), row);
  }
}
