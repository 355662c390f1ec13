package leadlight.quality;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** Stages of a job in the order of the work, as tables and the record write them. */
public final class Stages {

  private static final List<String> ORDER = List.of("as-received", "after-rework", "final");

  /** More times than a stage is ever repeated. */
  private static final int MOST = 1000;

  private Stages() {}

  /** Their names, for a refusal. */
  public static String names() {
    return String.join(", ", ORDER);
  }

  /** Place in the order of the work, by stage and time ("after rework 2"); empty if it is none. */
  public static OptionalInt place(String name) {
    String like = name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "-");
    for (int i = 0; i < ORDER.size(); i++) {
      if (like.matches(ORDER.get(i) + "(-\\d{1,3})?")) {
        String time = like.substring(ORDER.get(i).length()).replace("-", "");
        return OptionalInt.of(MOST * i + (time.isEmpty() ? 1 : Integer.parseInt(time)));
      }
    }
    return OptionalInt.empty();
  }

  /** Whether both name one stage, whichever time. */
  public static boolean same(String one, String other) {
    OptionalInt place = place(one);
    OptionalInt there = place(other);
    return place.isPresent()
        && there.isPresent()
        && place.getAsInt() / MOST == there.getAsInt() / MOST;
  }
}
