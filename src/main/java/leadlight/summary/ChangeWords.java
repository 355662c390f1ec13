package leadlight.summary;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Changes in words, equal ones together. */
final class ChangeWords {

  private static final List<PinChange.Kind> ORDER =
      List.of(
          PinChange.Kind.NEW, PinChange.Kind.STILL, PinChange.Kind.UNKNOWN, PinChange.Kind.MENDED);

  private ChangeWords() {}

  static List<String> of(List<PinChange> changes) {
    List<String> lines = new ArrayList<>();
    for (PinChange.Kind kind : ORDER) {
      Map<String, List<String>> pins = new LinkedHashMap<>();
      for (PinChange change : changes) {
        if (change.kind() == kind) {
          String what = words(change);
          pins.computeIfAbsent(what, key -> new ArrayList<>()).add("" + change.pin());
        }
      }
      pins.forEach(
          (what, which) ->
              lines.add(
                  (which.size() == 1 ? "pin " : "pins ") + String.join(", ", which) + ": " + what));
    }
    return lines;
  }

  private static String words(PinChange change) {
    String before = plain(change.before());
    String after = plain(change.after());
    return switch (change.kind()) {
      case NEW -> "new defect, " + before + " \u2192 " + after;
      case STILL -> "still " + (before.equals(after) ? after : before + " \u2192 " + after);
      case UNKNOWN -> "cannot be compared, " + before + " \u2192 " + after;
      case MENDED, SOUND -> before + " \u2192 " + after;
    };
  }

  /** The pins of a bridge stand together in the line already. */
  private static String plain(String words) {
    return words.replaceAll("bridge to [0-9]+( and bridge to [0-9]+)?", "bridge");
  }
}
