package leadlight.cli.score;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import leadlight.app.score.LeadsShown;
import leadlight.cli.terminal.Streams;
import leadlight.connector.RowRequest;
import leadlight.model.UserError;

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
        LeadsShown.shown(asked, photo)
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
}
