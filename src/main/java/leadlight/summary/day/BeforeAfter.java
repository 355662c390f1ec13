package leadlight.summary.day;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leadlight.text.Messages;

/**
 * One row of a board at two stages.
 *
 * @param before the photo before
 * @param after the photo after
 * @param changes one a pin, pin 1 first; empty if one of the photos shows no row
 * @param picture name of the file that shows both
 */
public record BeforeAfter(
    PhotoLine before, PhotoLine after, List<PinChange> changes, String picture) {

  /** Copies the list. */
  public BeforeAfter {
    changes = List.copyOf(changes);
  }

  /** Changes worth telling, with pins of one kind of change together: "2, 5: open → acceptable". */
  public List<String> words(Messages words) {
    return ChangeWords.of(changes, words);
  }

  /** Changes in words, equal ones together. */
  private static final class ChangeWords {

    private static final List<PinChange.Kind> ORDER =
        List.of(
            PinChange.Kind.NEW,
            PinChange.Kind.STILL,
            PinChange.Kind.UNKNOWN,
            PinChange.Kind.MENDED);

    private ChangeWords() {}

    static List<String> of(List<PinChange> changes, Messages words) {
      List<String> lines = new ArrayList<>();
      for (PinChange.Kind kind : ORDER) {
        Map<String, List<String>> pins = new LinkedHashMap<>();
        for (PinChange change : changes) {
          if (change.kind() == kind) {
            String what = words(change, words);
            pins.computeIfAbsent(what, key -> new ArrayList<>()).add("" + change.pin());
          }
        }
        pins.forEach(
            (what, which) ->
                lines.add(
                    words.get(
                            which.size() == 1 ? "pins.one" : "pins.many", String.join(", ", which))
                        + ": "
                        + what));
      }
      return lines;
    }

    private static String words(PinChange change, Messages words) {
      String before = change.before().words(words);
      String after = change.after().words(words);
      boolean same = change.kind() == PinChange.Kind.STILL && before.equals(after);
      String kind = same ? "still.same" : change.kind().name().toLowerCase(Locale.ROOT);
      return words.get("change." + kind, before, after);
    }
  }
}
