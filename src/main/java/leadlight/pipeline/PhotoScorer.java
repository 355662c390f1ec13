package leadlight.pipeline;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leadlight.enrol.Bench;
import leadlight.enrol.RowLook;
import leadlight.grade.Grader;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.joint.JointMeter;
import leadlight.model.Opinions;
import leadlight.model.Verdict;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Familiarity;
import leadlight.model.joint.GradedJoint;
import leadlight.model.joint.Joint;
import leadlight.model.picture.RowPictures;
import leadlight.model.picture.RowView;
import leadlight.model.remark.Note;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Deadline;
import leadlight.photo.Fitness;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.photo.PictureFacts;
import leadlight.reader.SecondReader;

/**
 * Scores photos by one set of settings. Holds no state of a photo: safe for use by several threads
 * at once, and the same photo always gives the same result.
 */
public final class PhotoScorer {

  private final Settings settings;
  private final Fitness fitness = new Fitness();
  private final JointMeter meter = new JointMeter();
  private final Grader grader;
  private final RowReading reading;
  private final Advice advice = Advice.builtIn();
  private final Optional<Bench> bench;

  /** Takes what is asked for and the limits to judge by. */
  public PhotoScorer(Settings settings, AcceptanceSet limits) {
    this(settings, limits, Optional.empty());
  }

  /** Takes the bench, too, that the photos are said to come from. */
  public PhotoScorer(Settings settings, AcceptanceSet limits, Optional<Bench> bench) {
    this.settings = settings;
    this.bench = bench;
    this.reading = new RowReading(settings, meter);
    this.grader = new Grader(limits, settings.productClass(), settings.opinions());
  }

  /**
   * A photo that is open, and what was made of it.
   *
   * @param photo closed with this object
   */
  public record Open(Photo photo, ScoredPhoto scored) implements AutoCloseable {

    @Override
    public void close() {
      photo.close();
    }
  }

  /**
   * Reads and scores a file within the time that one photo may take.
   *
   * @param scorer asked for when the photo is read
   * @throws leadlight.model.UserError if the file is no fit picture or takes too long
   */
  public static Open open(Path file, Supplier<PhotoScorer> scorer) {
    return new Deadline().within(file, () -> scored(new PhotoReader().read(file), scorer));
  }

  private static Open scored(Photo photo, Supplier<PhotoScorer> scorer) {
    try {
      return new Open(photo, scorer.get().score(photo));
    } catch (RuntimeException | Error e) {
      photo.close();
      throw e;
    }
  }

  /** Looks for the row, then scores its joints. */
  public ScoredPhoto score(Photo photo) {
    return score(photo, () -> reading.found(photo));
  }

  /** Scores the joints of a row that is already known. */
  public ScoredPhoto score(Photo photo, RowOutcome row) {
    return score(photo, () -> reading.read(photo, row));
  }

  /**
   * A photo that was scored before, told anew by verdicts that are known.
   *
   * @param joints the joints as they count, pin 1 first
   * @param rowNotes what was said of the row as a whole
   * @param fitness what was said of the photo
   */
  public ScoredPhoto retold(
      Photo photo,
      RowOutcome row,
      List<GradedJoint> joints,
      List<Note> rowNotes,
      List<Note> fitness) {
    Optional<RowView> view =
        row instanceof RowOutcome.Found found
            ? Optional.of(meter.cut(photo.frame(), settings.row(), found).measured().view())
            : Optional.empty();
    return new ScoredPhoto(
        photo.info(),
        settings,
        row,
        view,
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        rowNotes,
        fitness,
        advice.notVisible(settings.row()),
        advice.cautions(settings.row(), joints));
  }

  private ScoredPhoto score(Photo photo, Supplier<ReadRow> finding) {
    if (settings.opinions() != Opinions.MEASURES) {
      // Its networks are read while the row is looked for: a tenth of a second, once.
      CompletableFuture.runAsync(SecondReader::builtIn);
    }
    // The whole picture is judged beside the row; it must not be closed before that has ended.
    CompletableFuture<PictureFacts> facts =
        CompletableFuture.supplyAsync(() -> fitness.facts(photo.frame()));
    try {
      return score(photo, finding.get(), facts);
    } finally {
      facts.handle((done, trouble) -> done).join();
    }
  }

  private ScoredPhoto score(Photo photo, ReadRow row, CompletableFuture<PictureFacts> facts) {
    Grader.GradedRow graded =
        row.view().isPresent()
            ? grader.grade(
                settings.row(), row.joints(), row.make(), bench.map(it -> it.of(look(row))))
            : new Grader.GradedRow(List.of(), List.of());
    List<GradedJoint> joints = graded.joints();
    return new ScoredPhoto(
        photo.info(),
        settings,
        row.outcome(),
        row.view(),
        joints,
        joints.stream().map(GradedJoint::verdict).reduce(Verdict::worse).orElse(Verdict.UNJUDGED),
        graded.notes(),
        fitness(photo, row.outcome(), facts.join()),
        advice.notVisible(settings.row()),
        advice.cautions(settings.row(), joints));
  }

  private List<Note> fitness(Photo photo, RowOutcome row, PictureFacts facts) {
    OptionalDouble pitchPx =
        row instanceof RowOutcome.Found found
            ? OptionalDouble.of(found.pitchPx())
            : OptionalDouble.empty();
    List<Note> whatToChange = fitness.advice(facts, pitchPx);
    return Stream.concat(photo.notes().stream(), whatToChange.stream()).toList();
  }

  /** The numbers that the judgement of each joint rests on, pin 1 first, in a fixed order. */
  public List<Map<String, Double>> features(Photo photo, RowOutcome.Found row) {
    return meter.cut(photo.frame(), settings.row(), row).features();
  }

  private RowLook look(ReadRow row) {
    return new BenchLook(grader, grader.unfamiliar(row.make()))
        .of(row.cut().orElseThrow(), (RowOutcome.Found) row.outcome(), row.joints());
  }

  private JointMeter.CutRow cut(Photo photo, RowOutcome.Found row) {
    return meter.cut(photo.frame(), settings.row(), row);
  }

  /**
   * What a bench is enrolled by, and judges by.
   *
   * @param scored this photo's result
   */
  public RowLook look(Photo photo, ScoredPhoto scored, RowOutcome.Found row) {
    boolean unfamiliar =
        scored.rowNotes().stream().anyMatch(NoteOfRow.Unfamiliar.class::isInstance);
    List<Joint> joints = scored.joints().stream().map(GradedJoint::joint).toList();
    return new BenchLook(grader, unfamiliar).of(cut(photo, row), row, joints);
  }

  /**
   * The verdicts of a scored row if its photo came from a bench.
   *
   * @param look what the bench sees of it, and whether the general opinions count on its make
   */
  public List<GradedJoint> asOf(Bench enrolled, ScoredPhoto scored, RowLook look) {
    boolean unfamiliar = !look.setting().general();
    return grader
        .grade(
            settings.row(),
            scored.joints().stream().map(GradedJoint::joint).toList(),
            new Familiarity(unfamiliar ? 1 : 0, settings.opinions() != Opinions.MEASURES),
            Optional.of(enrolled.of(look)))
        .joints();
  }

  /** The opinions on a joint that count, as one. */
  public Chances combined(Joint joint) {
    return grader.combined(joint);
  }

  /** How suspect a joint is beside the others of its row. */
  public double suspicion(GradedJoint joint) {
    return grader.suspicion(joint);
  }

  /** The small pictures of the joints that the second reader looks at. */
  public RowPictures pictures(Photo photo, RowOutcome.Found row) {
    return meter.cut(photo.frame(), settings.row(), row).pictures();
  }
}
