package leadlight.app.enrol;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import leadlight.model.UserError;

/** A table of single known joints: photo, pin, state. */
public final class KnownJoints {

  private static final String HEADER = "photo,pin,state";

  private KnownJoints() {}

  /**
   * The pins of each photo, true where soldered.
   *
   * @throws UserError if the table is not as it should be, with its line
   */
  public static Map<Path, Map<Integer, Boolean>> read(Path table) {
    List<String> lines = lines(table);
    if (lines.isEmpty() || !lines.get(0).replace("\uFEFF", "").strip().equals(HEADER)) {
      throw new UserError(table + ": the first line must be " + HEADER);
    }
    Map<Path, Map<Integer, Boolean>> known = new LinkedHashMap<>();
    for (int i = 1; i < lines.size(); i++) {
      String[] cells = lines.get(i).strip().split(",", -1);
      if (cells.length != 3 || !cells[1].strip().matches("[1-9][0-9]{0,3}")) {
        throw new UserError(
            "%s, line %d: must be photo,pin,state as row.jpg,7,unsoldered".formatted(table, i + 1));
      }
      Path photo = table.resolveSibling(cells[0].strip()).normalize();
      Map<Integer, Boolean> pins = known.computeIfAbsent(photo, key -> new TreeMap<>());
      int pin = Integer.parseInt(cells[1].strip());
      if (pins.put(pin, soldered(cells[2].strip(), table, i + 1)) != null) {
        throw new UserError(
            "%s, line %d: pin %d of %s is named twice; keep one line"
                .formatted(table, i + 1, pin, cells[0].strip()));
      }
    }
    return known;
  }

  private static boolean soldered(String state, Path table, int line) {
    return switch (state) {
      case "sound" -> true;
      case "unsoldered" -> false;
      default ->
          throw new UserError(
              "%s, line %d: state must be sound or unsoldered, is \"%s\""
                  .formatted(table, line, state));
    };
  }

  private static List<String> lines(Path table) {
    try {
      return Files.readAllLines(table, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UserError(table + " cannot be read; check the path, and save it as UTF-8");
    }
  }
}
