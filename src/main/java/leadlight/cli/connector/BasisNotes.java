package leadlight.cli.connector;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlight.data.Basis;

/** Collects what figures rest on, things with the same basis in one line. */
final class BasisNotes {

  private final Map<String, Set<String>> things = new LinkedHashMap<>();

  void add(String thing, Basis basis) {
    String words = basis.words() + basis.note().map(note -> "; " + note).orElse("");
    things.computeIfAbsent(words, key -> new LinkedHashSet<>()).add(thing);
  }

  /** One row a basis: the things, then what they rest on. */
  List<List<String>> rows() {
    return things.entrySet().stream()
        .map(entry -> List.of(String.join(", ", entry.getValue()) + ": " + entry.getKey()))
        .toList();
  }
}
