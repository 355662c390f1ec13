package leadlight.page;

import java.util.List;
import java.util.stream.Collectors;
import leadlight.model.UserError;
import leadlight.summary.board.BoardStanding;
import leadlight.summary.board.BoardStanding.Point;
import leadlight.text.Messages;

/** Whether a decision to hand a board back, or not to, may be recorded. */
public final class HandBack {

  private HandBack() {}

  /**
   * Refuses a yes that something recorded contradicts, and a decision without its reason.
   *
   * @param because what the decision rests on; may be empty
   * @throws UserError if so, saying what
   */
  public static void check(BoardStanding stands, boolean yes, String because, Messages words) {
    if (!yes && because.isBlank()) {
      throw new UserError(words.get("hand-back.why-not"));
    }
    if (yes && !stands.mayBeHandedBack()) {
      throw new UserError(words.get("hand-back.contradicted", contradictions(stands, words)));
    }
    List<Point> unseen =
        stands.open().stream()
            .filter(
                p ->
                    p.code() == BoardStanding.Code.UNJUDGED
                        || p.code() == BoardStanding.Code.LEGS_UNJUDGED)
            .toList();
    if (yes && !unseen.isEmpty() && because.isBlank()) {
      throw new UserError(words.get("hand-back.unseen", said(unseen, words)));
    }
  }

  /** What forbids it, in one line. */
  public static String contradictions(BoardStanding stands, Messages words) {
    return said(stands.open().stream().filter(p -> p.code().forbids()).toList(), words);
  }

  private static String said(List<Point> points, Messages words) {
    return points.stream().map(p -> OpenPoints.of(p, words)).collect(Collectors.joining("; "));
  }
}
