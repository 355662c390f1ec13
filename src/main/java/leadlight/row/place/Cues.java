package leadlight.row.place;

import java.util.LinkedHashMap;
import java.util.Map;

/** Named cues row by row, and their weighted sum. */
final class Cues {

  private final Map<String, double[]> cues = new LinkedHashMap<>();

  void add(String name, double[] rows) {
    cues.put(name, rows);
  }

  Map<String, double[]> all() {
    return cues;
  }

  /**
   * Weighted sums.
   *
   * @throws IllegalArgumentException unless each cue has a weight and each weight a cue
   */
  double[] score(Map<String, Double> weights) {
    if (!weights.keySet().equals(cues.keySet())) {
      throw new IllegalArgumentException(
          "cues %s need one weight each, not %s".formatted(cues.keySet(), weights.keySet()));
    }
    double[] sum = null;
    for (Map.Entry<String, double[]> cue : cues.entrySet()) {
      double weight = weights.get(cue.getKey());
      sum = sum == null ? new double[cue.getValue().length] : sum;
      for (int y = 0; y < sum.length; y++) {
        sum[y] += weight * cue.getValue()[y];
      }
    }
    return sum == null ? new double[0] : sum;
  }
}
