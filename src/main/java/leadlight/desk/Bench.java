package leadlight.desk;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.connector.RowRequest;
import leadlight.life.BenchRules;
import leadlight.life.JobScorer;
import leadlight.life.PhotoShelf;
import leadlight.life.Presets;
import leadlight.life.StandingPhoto;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.model.result.Settings;
import leadlight.page.HandBack;
import leadlight.record.JobRecord;
import leadlight.record.said.BenchResult;
import leadlight.record.said.BenchTest;
import leadlight.record.said.LifeEvent;
import leadlight.record.said.Overrule;
import leadlight.record.scoring.Stage;
import leadlight.record.scoring.Subject;
import leadlight.summary.board.BoardStanding;

/**
 * A bench at work: which board lies there, what it is looked for, and what is done to it. All that
 * counts is in the record; what is lost with this object is only which board was chosen.
 */
final class Bench {

  private final BenchSetup setup;
  private final PhotoShelf shelf;
  private final Hands hands = new Hands();
  private Optional<Subject> subject = Optional.empty();
  private Optional<Presets.Preset> preset = Optional.empty();
  private long changes;

  Bench(BenchSetup setup) {
    this.setup = setup;
    this.shelf = new PhotoShelf(setup.recordFolder());
    setup.record().brokenOff().forEach(this::finish);
  }

  /** What cannot be finished keeps no bench from working; "record verify" names it. */
  private void finish(long scoring) {
    try {
      StandingPhoto.refresh(setup.record(), scoring, setup.limits(), shelf, setup.writer());
    } catch (UserError ignored) {
      // A folder that cannot be written now is asked again at the next start.
    }
  }

  BenchSetup setup() {
    return setup;
  }

  PhotoShelf shelf() {
    return shelf;
  }

  synchronized Optional<Subject> subject() {
    return subject;
  }

  synchronized Optional<Presets.Preset> preset() {
    return preset;
  }

  /** Grows with everything that a page may have to show anew. */
  synchronized long changes() {
    return changes;
  }

  private synchronized void changed() {
    changes++;
  }

  /** Puts a board on the bench. */
  synchronized void choose(Subject chosen) {
    subject = Optional.of(chosen);
    changes++;
  }

  /** Chooses what is looked for. */
  synchronized void choose(String word) {
    preset = word.isEmpty() ? Optional.empty() : Optional.of(setup.presets().of(word));
    changes++;
  }

  RowRequest row() {
    return preset().map(Presets.Preset::asked).orElse(setup.row());
  }

  boolean hasRow() {
    return !row().isEmpty();
  }

  /** A scorer of the row that is looked for. */
  JobScorer scorer() {
    int productClass = preset().map(Presets.Preset::productClass).orElse(setup.productClass());
    return new JobScorer(
        new JobScorer.Desk(
            setup.limits(),
            setup.writer(),
            setup.record(),
            setup.out(),
            setup.person(),
            setup.clock(),
            setup.enrolled()),
        new Settings(row().spec(), productClass, setup.limits().id(), Optional.empty()));
  }

  /**
   * Takes a picture into the record.
   *
   * @return number of the scoring
   */
  long take(byte[] picture, String name) throws Refused {
    Subject of = subject().orElseThrow(() -> new Refused(setup.words().get("desk.choose-first")));
    if (!hasRow()) {
      throw new Refused(setup.words().get("desk.row-first"));
    }
    Optional<String> port = of.port().or(() -> preset().flatMap(Presets.Preset::port));
    long id = scorer().score(shelf.keep(picture, name), of.at(port)).scoring();
    changed();
    return id;
  }

  /** The board on the bench as it stands. */
  Optional<BoardStanding> standing() {
    return subject()
        .map(
            of ->
                BoardStanding.of(
                    setup.record(),
                    of.job(),
                    of.board(),
                    BenchRules.builtIn().mostHeats().value()));
  }

  /** The last photos of the board on the bench, the latest first. */
  List<BoardStanding.Shot> last(int most) {
    return standing().map(BoardStanding::shots).orElse(List.of()).stream()
        .sorted(Comparator.comparing((BoardStanding.Shot shot) -> -shot.scoring().id()))
        .limit(most)
        .toList();
  }

  void said(
      Instant pressed, long scoring, int pin, BenchTest test, String result, OptionalInt other)
      throws Refused {
    BenchResult said = new BenchResult(test, result, other, setup.person(), now());
    if (hands.once(
        pressed,
        List.of("bench", scoring, pin, test, result, other),
        () -> setup.record().bench(scoring, pin, said))) {
      refresh(scoring);
    }
  }

  void overruled(Instant pressed, long scoring, int pin, Verdict verdict, String reason)
      throws Refused {
    Overrule said = new Overrule(verdict, Optional.empty(), reason, setup.person(), now());
    if (hands.once(
        pressed,
        List.of("opinion", scoring, pin, verdict, reason),
        () -> setup.record().overrule(scoring, pin, said))) {
      refresh(scoring);
    }
  }

  /** Takes the last word on a joint back: an opinion, or else what the bench said. */
  void takeBack(Instant pressed, long scoring, int pin, boolean opinion) throws Refused {
    JobRecord.Withdrawal why = new JobRecord.Withdrawal("", setup.person(), now());
    if (hands.once(
        pressed,
        List.of("back", scoring, pin, opinion),
        () -> {
          if (opinion) {
            setup.record().takeBackOverrule(scoring, pin, why);
          } else {
            setup.record().takeBackBench(scoring, pin, why);
          }
        })) {
      refresh(scoring);
    }
  }

  void note(
      Instant pressed,
      LifeEvent.Kind kind,
      String words,
      List<Integer> pins,
      Optional<Boolean> good)
      throws Refused {
    Subject of = subject().orElseThrow(() -> new Refused(setup.words().get("desk.choose-first")));
    if (kind == LifeEvent.Kind.HAND_BACK) {
      decide(good.orElseThrow(), words);
    }
    LifeEvent event = new LifeEvent(kind, words.strip(), pins, good, setup.person(), now());
    if (hands.once(
        pressed,
        List.of("note", of, kind, event.words(), pins, good),
        () -> setup.record().add(of.job(), of.board(), event))) {
      changed();
    }
  }

  private void decide(boolean yes, String because) throws Refused {
    try {
      HandBack.check(standing().orElseThrow(), yes, because, setup.words());
    } catch (UserError e) {
      throw new Refused(e.getMessage());
    }
  }

  /** What was said is in the record whether or not its results could be brought up to date. */
  private void refresh(long scoring) throws Refused {
    Optional<String> left =
        StandingPhoto.refresh(setup.record(), scoring, setup.limits(), shelf, setup.writer());
    changed();
    if (left.isPresent()) {
      throw new Refused(left.get());
    }
  }

  ZonedDateTime now() {
    return ZonedDateTime.now(setup.clock());
  }

  /** The stage by its name. */
  static Stage stage(String name) {
    return Stage.of(name).orElseThrow(() -> new IllegalArgumentException("no stage " + name));
  }
}
