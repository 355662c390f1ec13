package leadlight.connector;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Unmodifiable copies that keep their order; an absent collection is an empty one. */
final class Copies {

  private Copies() {}

  static <T> List<T> list(List<T> given) {
    return given == null ? List.of() : List.copyOf(given);
  }

  static <V> Map<String, V> map(Map<String, V> given) {
    return given == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(given));
  }
}
