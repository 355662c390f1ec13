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
          String what = label(kind) + change.before() + " \u2192 " + change.after();
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

  private static String label(PinChange.Kind kind) {
    return switch (kind) {
      case NEW -> "new defect, ";
      case STILL -> "still a defect, ";
      case UNKNOWN -> "cannot be compared, ";
      case MENDED, SOUND -> "";
    };
  }
}
