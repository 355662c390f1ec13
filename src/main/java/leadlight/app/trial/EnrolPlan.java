package leadlight.app.trial;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leadlight.model.UserError;

/**
 * Which photos of a trial are shown to which bench, and which it judges: a table with the columns
 * bench, photo, as (sound, unsoldered, known or judge) and pins (all, odd or even).
 */
final class EnrolPlan {

  private static final String HEADER = "bench,photo,as,pins";

  private EnrolPlan() {}

  /** What a photo is to a bench. */
  enum As {
    SOUND,
    UNSOLDERED,
    KNOWN,
    JUDGE
  }

  /** Which pins count. */
  enum Pins {
    ALL,
    ODD,
    EVEN;

    boolean has(int pin) {
      return this == ALL || (pin % 2 == 1) == (this == ODD);
    }
  }

  /** A line of the plan. */
  record Part(String photo, As as, Pins pins) {}

  /** The parts of each bench, in the order of the table. */
  static Map<String, List<Part>> read(Path table) {
    List<String> lines;
    try {
      lines = Files.readAllLines(table, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UserError(table + " cannot be read; check the path");
    }
    if (lines.isEmpty() || !lines.get(0).equals(HEADER)) {
      throw new UserError(table + ": the first line must be " + HEADER);
    }
    Map<String, List<Part>> benches = new LinkedHashMap<>();
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).split(",", -1);
      try {
        benches
            .computeIfAbsent(cells[0], key -> new ArrayList<>())
            .add(
                new Part(
                    cells[1],
                    As.valueOf(cells[2].toUpperCase(Locale.ROOT)),
                    Pins.valueOf(cells[3].toUpperCase(Locale.ROOT))));
      } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
        throw new UserError(
            "%s, line %d: must be %s as ring,a.jpg,sound,all".formatted(table, i + 1, HEADER));
      }
    }
    return benches;
  }
}
