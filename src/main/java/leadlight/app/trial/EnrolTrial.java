package leadlight.app.trial;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import leadlight.enrol.Bench;
import leadlight.enrol.Enroller;
import leadlight.enrol.RowLook;
import leadlight.enrol.learn.Enrolment;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.joint.EnrolledRow;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.trial.outcome.Comparison;
import leadlight.trial.outcome.NoteComparison;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.sets.EnrolTally;
import leadlight.trial.truth.RowNote;
import leadlight.trial.truth.TrialPhoto;
import leadlight.trial.truth.TrueClass;
import leadlight.trial.truth.TruthFolder;
import leadlight.vision.Threads;

/**
 * Counts what enrolment is worth: benches are shown one, two and four photos of each kind (three
 * where there are no more) and judge others, beside the general rules. Only joints of right rows
 * are shown and counted.
 */
public final class EnrolTrial {

  private static final int LEAST_OF_MOST = 3;

  private static final int[] SHOWN = {1, 2, 4};

  private final Map<String, TrialPhoto> photos = new LinkedHashMap<>();
  private final Map<String, Optional<Seen>> seen = new LinkedHashMap<>();
  private final AcceptanceSet limits;
  private final Opinions opinions;
  private final boolean unfamiliar;
  private final EnrolTally tally = new EnrolTally();

  /**
   * Takes the photos.
   *
   * @param unfamiliar whether to count as if the general opinions were not known to hold on them
   */
  public EnrolTrial(Path folder, AcceptanceSet limits, Opinions opinions, boolean unfamiliar) {
    this.unfamiliar = unfamiliar;
    this.limits = limits;
    this.opinions = opinions;
    TruthFolder.read(folder).forEach(it -> photos.put(it.file().getFileName().toString(), it));
  }

  /** A photo with its truth: soldered or not by pin, where that is known. */
  private record Seen(
      PhotoScorer scorer, ScoredPhoto scored, RowLook look, Map<Integer, String> truth) {}

  /** All benches of a plan. */
  public EnrolTally count(Path plan) {
    Threads.set(1);
    EnrolPlan.read(plan).forEach(this::bench);
    return tally;
  }

  private void bench(String name, List<EnrolPlan.Part> parts) {
    for (int shown : SHOWN) {
      Optional<Bench> bench = enrolled(name, parts, shown);
      bench.ifPresent(it -> judge(name, shown, it, parts));
    }
    seen.clear();
  }

  /** The bench by its first photos of each kind; empty if it has fewer than that. */
  private Optional<Bench> enrolled(String name, List<EnrolPlan.Part> parts, int shown) {
    Enroller enroller = new Enroller(name, "trial", opinions.id());
    for (EnrolPlan.As as :
        List.of(EnrolPlan.As.SOUND, EnrolPlan.As.UNSOLDERED, EnrolPlan.As.KNOWN)) {
      List<EnrolPlan.Part> of = parts.stream().filter(it -> it.as() == as).toList();
      if (!of.isEmpty() && of.size() < Math.min(shown, LEAST_OF_MOST)) {
        return Optional.empty();
      }
      of.stream().limit(shown).forEach(part -> show(enroller, part));
    }
    return Optional.of(new Bench(enroller.enrolment(1)));
  }

  private void show(Enroller enroller, EnrolPlan.Part part) {
    Optional<Seen> look = look(part.photo());
    Map<Integer, Boolean> pins = new TreeMap<>();
    look.ifPresent(
        it ->
            it.truth()
                .forEach(
                    (pin, state) -> {
                      if (part.pins().has(pin) && fits(part.as(), state)) {
                        pins.put(pin, state.equals("sound"));
                      }
                    }));
    try {
      if (!pins.isEmpty()) {
        Enrolment.Kind kind = Enrolment.Kind.valueOf(part.as().name());
        Seen it = look.orElseThrow();
        enroller.show(part.photo(), it.scored().photo().sha256(), kind, it.look(), pins);
      }
    } catch (UserError e) {
      tally.refused(e.getMessage());
    }
  }

  /** A person who shows a row as unsoldered shows its unsoldered joints and no other. */
  private static boolean fits(EnrolPlan.As as, String state) {
    return switch (as) {
      case SOUND -> state.equals("sound");
      case UNSOLDERED -> !state.equals("sound");
      default -> true;
    };
  }

  private void judge(String name, int shown, Bench bench, List<EnrolPlan.Part> parts) {
    for (EnrolPlan.Part part : parts) {
      if (part.as() == EnrolPlan.As.JUDGE) {
        look(part.photo()).ifPresent(it -> judge(name, shown, bench, part, it));
      }
    }
  }

  private void judge(String name, int shown, Bench bench, EnrolPlan.Part part, Seen it) {
    ScoredPhoto scored = it.scored();
    EnrolledRow row = bench.of(it.look());
    List<GradedJoint> joints = it.scorer().asOf(bench, scored, it.look());
    for (GradedJoint joint : joints) {
      String truth = it.truth().get(joint.pin());
      if (truth != null && part.pins().has(joint.pin())) {
        tally.add(
            new EnrolTally.Judged(
                name,
                shown,
                part.photo(),
                joint.pin(),
                truth,
                scored.joints().get(joint.pin() - 1).verdict(),
                joint.verdict(),
                row.note().code(),
                row.notAs().orElse(""),
                row.judges() ? row.opinions().get(joint.pin() - 1).side().name() : "",
                bench.chance(it.look(), joint.pin()),
                it.look().joints().get(joint.pin() - 1).general(),
                bench.vouches() ? bench.proof().upTo() : 1,
                joint.doubts().stream().map(d -> d.code()).collect(Collectors.joining(" "))));
      }
    }
  }

  private Optional<Seen> look(String name) {
    return seen.computeIfAbsent(name, this::scored);
  }

  private Optional<Seen> scored(String name) {
    TrialPhoto trial = photos.get(name);
    if (trial == null) {
      throw new UserError("the plan names " + name + ", which the folder does not hold with truth");
    }
    PhotoScorer scorer = TrialRun.scorer(TrialRun.row(trial), limits, Optional.empty(), opinions);
    try (Photo photo = new PhotoReader().read(trial.file())) {
      ScoredPhoto scored = scorer.score(photo);
      if (!(scored.row() instanceof RowOutcome.Found found) || !right(trial, scored, scorer)) {
        tally.lost(name);
        return Optional.empty();
      }
      return Optional.of(
          new Seen(scorer, scored, known(scorer.look(photo, scored, found)), truth(trial, scored)));
    }
  }

  private RowLook known(RowLook look) {
    return unfamiliar
        ? new RowLook(
            look.pictures(),
            new Enrolment.Setting(
                look.setting().pitchPx(),
                look.setting().blurPitch(),
                look.setting().dark(),
                look.setting().bright(),
                false),
            look.joints().stream().map(it -> new RowLook.Joint(it.fit(), 0)).toList())
        : look;
  }

  private static boolean right(TrialPhoto trial, ScoredPhoto scored, PhotoScorer scorer) {
    RowResult row =
        trial
            .truth()
            .map(truth -> Comparison.of(truth, scored).row())
            .orElseGet(
                () ->
                    NoteComparison.of(
                            trial.note().orElseThrow(),
                            scored,
                            joint -> scorer.combined(joint).notHeld(),
                            scorer::suspicion)
                        .row());
    return row == RowResult.RIGHT;
  }

  /** By pin: sound, or what is wrong with it; joints at a limit and unsure ones are not known. */
  private static Map<Integer, String> truth(TrialPhoto trial, ScoredPhoto scored) {
    Map<Integer, String> truth = new TreeMap<>();
    trial
        .truth()
        .ifPresent(
            it ->
                it.joints().stream()
                    .filter(joint -> joint.class2() != TrueClass.LIMIT)
                    .forEach(
                        joint ->
                            truth.put(
                                joint.pin(),
                                joint.class2() == TrueClass.ACCEPTABLE
                                    ? "sound"
                                    : joint.condition())));
    trial.note().ifPresent(it -> noted(it, scored, truth));
    return truth;
  }

  private static void noted(RowNote note, ScoredPhoto scored, Map<Integer, String> truth) {
    note.grades()
        .forEach(
            (place, grade) -> {
              int pin = scored.settings().row().pin1Reversed() ? note.leads() + 1 - place : place;
              if (grade != RowNote.Grade.UNSURE) {
                truth.put(pin, grade == RowNote.Grade.GOOD ? "sound" : "bad");
              }
            });
  }
}
