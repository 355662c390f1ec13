package leadlight.page;

import java.util.List;
import leadlight.page.photo.ReworkView;
import leadlight.page.words.SafeText;
import leadlight.summary.board.BoardStanding;
import leadlight.text.Messages;

/** What of a board stands open, in sentences. */
public final class OpenPoints {

  private OpenPoints() {}

  /** One sentence for each point. */
  public static List<String> of(BoardStanding board, Messages words) {
    return board.open().stream().map(point -> of(point, words)).toList();
  }

  /** "Defects at pins 3, 7-9: touch up, then photograph again." */
  static String of(BoardStanding.Point point, Messages words) {
    String key = "open." + point.code().id();
    String said = point.words().isEmpty() ? "" : ": " + SafeText.of(point.words());
    return point.pins().isEmpty()
        ? words.get(key, said)
        : words.get(
            key,
            words.get(
                    point.pins().size() == 1 ? "pins.one" : "pins.many",
                    ReworkView.runs(point.pins()))
                + (point.words().isEmpty() ? "" : " (" + SafeText.of(point.words()) + ")"));
  }
}
