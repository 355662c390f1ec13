package leadlight.quality;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leadlight.trial.Rate;

/**
 * How often the verdict of a part changes over repeats.
 *
 * @param parts verdicts other than the part's most frequent one, of all its verdicts
 * @param undecided verdicts that decide nothing, of all, by part
 */
public record Flips(Map<String, Rate> parts, Map<String, Rate> undecided) {

  /**
   * A verdict.
   *
   * @param part of which part
   * @param verdict category
   */
  public record Said(String part, String verdict) {}

  /** Counts. */
  public static Flips of(List<Said> verdicts, java.util.Set<String> open) {
    Map<String, List<String>> byPart = new LinkedHashMap<>();
    verdicts.forEach(
        v -> byPart.computeIfAbsent(v.part(), p -> new ArrayList<>()).add(v.verdict()));
    Map<String, Rate> flips = new LinkedHashMap<>();
    Map<String, Rate> undecided = new LinkedHashMap<>();
    byPart.forEach(
        (part, said) -> {
          int most =
              said.stream().mapToInt(s -> java.util.Collections.frequency(said, s)).max().orElse(0);
          flips.put(part, new Rate(said.size() - most, said.size()));
          int unsaid = (int) said.stream().filter(open::contains).count();
          undecided.put(part, new Rate(unsaid, said.size()));
        });
    return new Flips(flips, undecided);
  }

  /** Parts that flip at least once, of all. */
  public Rate flipping() {
    return new Rate((int) parts.values().stream().filter(r -> r.count() > 0).count(), parts.size());
  }

  /** Verdicts that are not their part's most frequent, of all. */
  public Rate verdicts() {
    return new Rate(
        parts.values().stream().mapToInt(Rate::count).sum(),
        parts.values().stream().mapToInt(Rate::of).sum());
  }
}
