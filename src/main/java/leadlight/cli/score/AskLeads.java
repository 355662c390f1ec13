package leadlight.cli.score;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.life.BenchRules;
import leadlight.model.Opinions;
import leadlight.model.UserError;
import leadlight.model.remark.NoteOfRow;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.photo.Photo;
import leadlight.photo.PhotoReader;
import leadlight.pipeline.PhotoScorer;

/** Where the pitch of a plain row was said and not how many leads it has: counts them, and asks. */
final class AskLeads {

  private final Streams streams;

  AskLeads(Streams streams) {
    this.streams = streams;
  }

  /** The row with its number of leads. */
  RowRequest of(RowRequest asked, Path photo) {
    if (asked.connector().isPresent() || asked.leads().isPresent() || asked.pitchMm().isEmpty()) {
      return asked;
    }
    int shown =
        count(asked, photo)
            .orElseThrow(
                () ->
                    new UserError(
                        "how many leads the row has does not show in "
                            + photo
                            + "; count them and say --leads N"));
    if (!streams.interactive() || !isConfirmed(shown)) {
      throw new UserError(shown + " leads show; if that is right, say --leads " + shown);
    }
    return asked.withLeads(shown);
  }

  private boolean isConfirmed(int shown) {
    streams.err().print("leadlight: " + shown + " leads show; is that right? [y/N] ");
    streams.err().flush();
    try {
      String answer =
          new BufferedReader(new InputStreamReader(streams.in(), StandardCharsets.UTF_8))
              .readLine();
      return answer != null && answer.strip().equalsIgnoreCase("y");
    } catch (IOException e) {
      return false;
    }
  }

  private static Optional<Integer> count(RowRequest asked, Path file) {
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
