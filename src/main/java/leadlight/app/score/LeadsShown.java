package leadlight.app.score;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.BenchRules;
import leadlight.model.Opinions;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;

/** How many leads a photo shows of a plain row whose pitch alone was said. */
public final class LeadsShown {

  private LeadsShown() {}

  /** Empty if it does not show. */
  public static Optional<Integer> shown(RowRequest asked, Path file) {
    try (Photo photo = new PhotoReader().read(file)) {
      for (int guess : BenchRules.builtIn().firstGuesses().counts()) {
        OptionalInt shown = shown(asked.withLeads(guess), photo);
        if (shown.isPresent()
            && (shown.getAsInt() == guess
                || shown(asked.withLeads(shown.getAsInt()), photo)
                    .equals(OptionalInt.of(shown.getAsInt())))) {
          return Optional.of(shown.getAsInt());
        }
      }
      return Optional.empty();
    }
  }

  private static OptionalInt shown(RowRequest row, Photo photo) {
    AcceptanceSet limits = AcceptanceSet.load(AcceptanceSet.DEFAULT_ID);
    Settings settings = new Settings(row.spec(), 2, limits.id(), Optional.empty(), Opinions.BOTH);
    RowOutcome outcome = new PhotoScorer(settings, limits).score(photo).row();
    if (outcome instanceof RowOutcome.Found found) {
      return OptionalInt.of(found.leads().size());
    }
    return outcome instanceof RowOutcome.NotFound none
            && none.reason() instanceof NoteOfRow.OtherCount other
            && other.shown() >= 3
        ? OptionalInt.of(other.shown())
        : OptionalInt.empty();
  }
}
