package leadlight.app.record;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;

/** Pins as a person writes them: "3,5,7-9". */
public final class PinList {

  private static final int MOST = 500;

  private PinList() {}

  public static List<Integer> of(String text) {
    List<Integer> pins = new ArrayList<>();
    for (String part : text.split(",", -1)) {
      String[] ends = part.strip().split("-", -1);
      try {
        int from = Integer.parseInt(ends[0].strip());
        int to = ends.length == 2 ? Integer.parseInt(ends[1].strip()) : from;
        if (ends.length <= 2 && from >= 1 && from <= to && to <= MOST) {
          for (int pin = from; pin <= to; pin++) {
            pins.add(pin);
          }
          continue;
        }
      } catch (NumberFormatException e) {
        // Said below, in the same words as a wrong order.
      }
      throw new UserError("pins are written as 3,5,7-9; not \"" + text + "\"");
    }
    return pins.stream().distinct().sorted().toList();
  }
}
