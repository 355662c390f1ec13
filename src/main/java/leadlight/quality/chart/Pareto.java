package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Causes by frequency, the most frequent first, equals by name.
 *
 * @param bars a bar a cause
 */
public record Pareto(List<Bar> bars) {

  /**
   * A cause.
   *
   * @param upTo share of this and all before it
   */
  public record Bar(String cause, int count, double upTo) {}

  /** Counts causes; no bars if there are none. */
  public static Pareto of(List<String> causes) {
    Map<String, Integer> counts = new TreeMap<>();
    causes.forEach(c -> counts.merge(c, 1, Integer::sum));
    List<Map.Entry<String, Integer>> sorted = new ArrayList<>(counts.entrySet());
    sorted.sort(Map.Entry.comparingByValue(Comparator.reverseOrder()));
    List<Bar> bars = new ArrayList<>();
    int sum = 0;
    for (Map.Entry<String, Integer> entry : sorted) {
      sum += entry.getValue();
      bars.add(new Bar(entry.getKey(), entry.getValue(), (double) sum / causes.size()));
    }
    return new Pareto(bars);
  }
}
