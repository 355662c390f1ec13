package leadlight.app.enrol;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.enrol.Enroller;
import leadlight.enrol.RowLook;
import leadlight.enrol.learn.Enrolment;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.model.UserError;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;
import leadlight.reader.SecondReader;
import leadlight.text.Sentences;

/** Shows photos to a bench, one by one: is this a row, and which of its joints can be learned. */
public final class EnrolRun {

  private final Settings settings;
  private final PhotoScorer scorer;
  private final Enroller enroller;

  public EnrolRun(
      String bench, Settings settings, AcceptanceSet limits, Optional<Enrolment> before) {
    this.settings = settings;
    this.scorer = new PhotoScorer(settings, limits);
    this.enroller = new Enroller(bench, SecondReader.version(), settings.opinions().id());
    before.ifPresent(enroller::goOn);
  }

  /** Shows a row of one kind; gives what was taken of it. */
  public String show(Path file, Enrolment.Kind kind) {
    Map<Integer, Boolean> pins = new TreeMap<>();
    for (int pin = 1; pin <= settings.row().leads(); pin++) {
      pins.put(pin, kind == Enrolment.Kind.SOUND);
    }
    return show(file, kind, pins);
  }

  /** Shows single joints of a row. */
  public String show(Path file, Map<Integer, Boolean> pins) {
    return show(file, Enrolment.Kind.KNOWN, pins);
  }

  private String show(Path file, Enrolment.Kind kind, Map<Integer, Boolean> pins) {
    try (Photo photo = new PhotoReader().read(file)) {
      ScoredPhoto scored = scorer.score(photo);
      if (scored.row() instanceof RowOutcome.NotFound none) {
        throw new UserError(file + ": " + Sentences.english().of(none.reason()));
      }
      pins.keySet().forEach(pin -> inRow(file, pin));
      RowLook look = scorer.look(photo, scored, (RowOutcome.Found) scored.row());
      int taken = enroller.show(scored.photo().file(), scored.photo().sha256(), kind, look, pins);
      return "%s: %d of %d joints taken".formatted(file, taken, pins.size());
    }
  }

  private void inRow(Path file, int pin) {
    if (pin < 1 || pin > settings.row().leads()) {
      throw new UserError(
          "%s: there is no pin %d in a row of %d".formatted(file, pin, settings.row().leads()));
    }
  }

  public Enrolment enrolment(int version) {
    return enroller.enrolment(version);
  }
}
