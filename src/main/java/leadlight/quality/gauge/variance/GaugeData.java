package leadlight.quality.gauge.variance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlight.model.UserError;

/**
 * Repeated readings of one measure, crossed: every operator measures every part equally often.
 *
 * @param parts names of the parts
 * @param operators names of the operators (persons, lamps, set-ups: whatever is exchanged)
 * @param values readings by part, operator, trial
 */
public record GaugeData(
    List<String> parts, List<String> operators, List<List<List<Double>>> values) {

  /**
   * A reading.
   *
   * @param part what was measured
   * @param operator by whom, or under which lamp or set-up
   * @param value reading, any unit
   */
  public record Reading(String part, String operator, double value) {}

  /**
   * Copies.
   *
   * @throws UserError if there are fewer than two parts, operators or trials, or cells of different
   *     sizes
   */
  public GaugeData {
    values = values.stream().map(p -> p.stream().map(List::copyOf).toList()).toList();
    parts = List.copyOf(parts);
    operators = List.copyOf(operators);
    if (parts.size() < 2 || operators.size() < 2 || values.get(0).get(0).size() < 2) {
      throw new UserError(
          ("a gauge study needs two parts, two operators and two trials or more; there are %d, %d"
                  + " and %d")
              .formatted(
                  parts.size(),
                  operators.size(),
                  values.isEmpty() || values.get(0).isEmpty() ? 0 : values.get(0).get(0).size()));
    }
  }

  /**
   * Sorts readings into cells, in the order in which names come.
   *
   * @throws UserError if a cell lacks readings that others have, naming it
   */
  public static GaugeData of(List<Reading> readings) {
    Map<String, Map<String, List<Double>>> cells = new LinkedHashMap<>();
    Set<String> operators = new LinkedHashSet<>();
    for (Reading r : readings) {
      operators.add(r.operator());
      cells
          .computeIfAbsent(r.part(), p -> new LinkedHashMap<>())
          .computeIfAbsent(r.operator(), o -> new ArrayList<>())
          .add(r.value());
    }
    int trials =
        cells.values().stream()
            .flatMap(m -> m.values().stream())
            .mapToInt(List::size)
            .max()
            .orElse(0);
    List<List<List<Double>>> values = new ArrayList<>();
    cells.forEach(
        (part, mine) -> {
          List<List<Double>> row = new ArrayList<>();
          for (String operator : operators) {
            List<Double> cell = mine.getOrDefault(operator, List.of());
            if (cell.size() != trials) {
              throw new UserError(
                  "part %s, operator %s has %d of %d readings; add them or leave the part out"
                      .formatted(part, operator, cell.size(), trials));
            }
            row.add(cell);
          }
          values.add(row);
        });
    return new GaugeData(List.copyOf(cells.keySet()), List.copyOf(operators), values);
  }

  /** The parts whose every cell is as full as the fullest; what is left out is counted. */
  public static List<Reading> complete(List<Reading> readings) {
    Map<List<String>, Integer> counts = new LinkedHashMap<>();
    Set<String> operators = new LinkedHashSet<>();
    readings.forEach(
        r -> {
          operators.add(r.operator());
          counts.merge(List.of(r.part(), r.operator()), 1, Integer::sum);
        });
    int most = counts.values().stream().mapToInt(n -> n).max().orElse(0);
    return readings.stream()
        .filter(
            r ->
                operators.stream()
                    .allMatch(o -> counts.getOrDefault(List.of(r.part(), o), 0) == most))
        .toList();
  }

  /** Repeats in each cell. */
  public int trials() {
    return values.get(0).get(0).size();
  }

  double cellMean(int part, int operator) {
    return mean(values.get(part).get(operator));
  }

  double partMean(int part) {
    return mean(values.get(part).stream().flatMap(List::stream).toList());
  }

  double operatorMean(int operator) {
    return mean(values.stream().flatMap(p -> p.get(operator).stream()).toList());
  }

  double mean() {
    return mean(values.stream().flatMap(List::stream).flatMap(List::stream).toList());
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElseThrow();
  }
}
