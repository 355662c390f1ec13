package leadlight.app.enrol;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import leadlight.enrol.Bench;
import leadlight.enrol.BenchFolder;
import leadlight.enrol.Enroller;
import leadlight.enrol.RowLook;
import leadlight.enrol.learn.Enrolment;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.PhotoShelf;
import leadlight.model.UserError;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.SecondReader;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Scoring;

/**
 * From the record's words to a proposed version of a bench, and to what of the past it would judge
 * otherwise. Each photo is looked at once.
 */
public final class RecordTeaching {

  private final Enrolment before;
  private final RecordWords words;
  private final PhotoShelf shelf;
  private final AcceptanceSet limits;
  private final List<Seen> seen = new ArrayList<>();
  private final List<String> left = new ArrayList<>();

  private RecordTeaching(
      Enrolment before, RecordWords words, PhotoShelf shelf, AcceptanceSet limits) {
    this.before = before;
    this.words = words;
    this.shelf = shelf;
    this.limits = limits;
  }

  /**
   * Proposes a version that learns from the record; what is said of it, in lines.
   *
   * @param bench the bench's name
   * @param shelf the record's photos
   */
  public static List<String> propose(
      BenchFolder folder, String bench, JobRecord record, PhotoShelf shelf, AcceptanceSet limits) {
    Enrolment before = folder.inUse();
    RecordWords words = RecordWords.of(record, bench);
    RecordTeaching teaching = new RecordTeaching(before, words, shelf, limits);
    Enrolment enrolment = teaching.proposed(folder.next());
    List<String> lines = new ArrayList<>(words.lines());
    teaching.left.forEach(line -> lines.add("  left out: " + line));
    lines.addAll(BenchWords.of(enrolment));
    List<String> changes = teaching.changes(enrolment);
    lines.add(
        changes.isEmpty()
            ? "no verdict of the past would change"
            : "verdicts of the past that would change: " + changes.size());
    lines.addAll(changes);
    lines.add(
        "proposed, not in use: %s; leadlight enrol %s --adopt puts it into use"
            .formatted(folder.propose(enrolment), bench));
    return lines;
  }

  /** A photo of the past that was looked at anew. */
  private record Seen(
      RecordWords.Said said, PhotoScorer scorer, ScoredPhoto scored, RowLook look) {}

  /**
   * The proposed version.
   *
   * @throws UserError if the record teaches nothing, or contradicts what was shown
   */
  private Enrolment proposed(int version) {
    words.photos().forEach(this::look);
    Set<String> shownBefore = hashes(it -> it != Enrolment.Kind.RECORDED);
    Set<String> anew = new LinkedHashSet<>();
    seen.forEach(it -> anew.add(hash(it.said())));
    anew.removeAll(shownBefore);
    Enroller enroller = new Enroller(before.bench(), SecondReader.version(), before.opinions());
    enroller.goOn(before, anew);
    int taken = 0;
    for (Seen it : seen) {
      if (!known(it.said()).isEmpty()) {
        taken += taught(enroller, it, anew.contains(hash(it.said())));
      }
    }
    if (taken == 0 && hashes(it -> it == Enrolment.Kind.RECORDED).isEmpty()) {
      throw nothing();
    }
    return enroller.enrolment(version);
  }

  private Set<String> hashes(Predicate<Enrolment.Kind> which) {
    Set<String> hashes = new LinkedHashSet<>();
    before.photos().stream()
        .filter(it -> which.test(it.kind()))
        .forEach(it -> hashes.add(it.sha256()));
    return hashes;
  }

  private int taught(Enroller enroller, Seen it, boolean anew) {
    if (anew) {
      return shown(enroller, it);
    }
    left.add(it.said().scoring().photo().file() + " was shown before, and stays as it was shown");
    return 0;
  }

  private UserError nothing() {
    return new UserError(
        "the record teaches bench %s nothing yet: prod joints of photos that were scored into it"
                .formatted(before.bench())
            + " as of this bench (score --job NAME --bench %s)".formatted(before.bench())
            + (left.isEmpty() ? "" : "; " + left.get(0)));
  }

  private static String hash(RecordWords.Said said) {
    return said.scoring().photo().sha256();
  }

  private void look(RecordWords.Said said) {
    Scoring scoring = said.scoring();
    if (!scoring.method().settings().opinions().id().equals(before.opinions())) {
      left.add("scoring %d asked other opinions".formatted(scoring.id()));
      return;
    }
    Optional<Photo> open = shelf.open(scoring);
    if (open.isEmpty()) {
      left.add(
          "the photo of scoring %d is gone, or was changed (score --keep-photo keeps it)"
              .formatted(scoring.id()));
      return;
    }
    try (Photo photo = open.get()) {
      PhotoScorer scorer = new PhotoScorer(scoring.method().settings(), limits);
      ScoredPhoto scored = scorer.score(photo);
      if (scored.row() instanceof RowOutcome.Found found) {
        seen.add(new Seen(said, scorer, scored, scorer.look(photo, scored, found)));
      } else {
        left.add("no row is found any more on the photo of scoring %d".formatted(scoring.id()));
      }
    }
  }

  private int shown(Enroller enroller, Seen it) {
    Scoring scoring = it.said().scoring();
    try {
      return enroller.show(
          scoring.photo().file(),
          hash(it.said()),
          Enrolment.Kind.RECORDED,
          it.look(),
          known(it.said()));
    } catch (UserError e) {
      left.add(e.getMessage());
      return 0;
    }
  }

  /** What is known of a photo; refused where it contradicts what the bench was shown. */
  private Map<Integer, Boolean> known(RecordWords.Said said) {
    Map<Integer, Boolean> known = new TreeMap<>(said.known());
    for (Enrolment.Shown shown : before.joints()) {
      Enrolment.Photo photo = before.photos().get(shown.photo());
      Boolean now = known.get(shown.pin());
      boolean other = now != null && now != shown.soldered();
      if (photo.sha256().equals(hash(said)) && photo.kind() != Enrolment.Kind.RECORDED && other) {
        throw new UserError(
            "pin %d of %s was shown as %s, the record says otherwise (scoring %d): enrol anew without it (--anew)"
                .formatted(
                    shown.pin(),
                    photo.file(),
                    shown.soldered() ? "sound" : "unsoldered",
                    said.scoring().id()));
      }
    }
    return known;
  }

  /** Which joints of the past a version would judge otherwise, beside what is known of them. */
  private List<String> changes(Enrolment proposed) {
    Bench was = new Bench(before);
    Bench now = new Bench(proposed);
    List<String> lines = new ArrayList<>();
    for (Seen it : seen) {
      List<GradedJoint> then = verdicts(it, was);
      List<GradedJoint> next = verdicts(it, now);
      for (int i = 0; i < then.size(); i++) {
        if (then.get(i).verdict() != next.get(i).verdict()) {
          lines.add(
              "  scoring %d, pin %d: %s, then %s; the record: %s"
                  .formatted(
                      it.said().scoring().id(),
                      i + 1,
                      then.get(i).verdict().id(),
                      next.get(i).verdict().id(),
                      word(it.said().word(i + 1))));
        }
      }
    }
    return lines;
  }

  private static List<GradedJoint> verdicts(Seen it, Bench bench) {
    return it.scorer().asOf(bench, it.scored(), it.look());
  }

  private static String word(JointWord word) {
    return switch (word) {
      case UNSOLDERED -> "the bench found it open";
      case UNSOLDERED_BY_EYE -> "a person saw it open";
      case SOUND -> "prodded, it holds";
      case SOUND_BY_EYE -> "a person says it is sound";
      case CONDUCTS -> "it conducts";
      case OTHER_FAULT -> "a fault of another kind";
      case CONTRADICTORY -> "its words contradict each other";
      case NONE -> "nothing is known of it";
    };
  }
}
