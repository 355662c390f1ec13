package leadlight.quality.gauge.variance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Readings of parts by operators, cells of any size.
 *
 * @param parts names
 * @param operators names
 * @param values readings by part and operator; a cell may be empty
 */
public record Cells(List<String> parts, List<String> operators, List<List<List<Double>>> values) {

  /** A reading. */
  public record Reading(String part, String operator, double value) {}

  /** Copies. */
  public Cells {
    parts = List.copyOf(parts);
    operators = List.copyOf(operators);
    values = values.stream().map(row -> row.stream().map(List::copyOf).toList()).toList();
  }

  /** Sorts readings into cells, in the order in which names come. */
  public static Cells of(List<Reading> readings) {
    Map<String, Map<String, List<Double>>> cells = new LinkedHashMap<>();
    Set<String> operators = new LinkedHashSet<>();
    for (Reading reading : readings) {
      operators.add(reading.operator);
      cells
          .computeIfAbsent(reading.part, part -> new LinkedHashMap<>())
          .computeIfAbsent(reading.operator, operator -> new ArrayList<>())
          .add(reading.value);
    }
    List<List<List<Double>>> values = new ArrayList<>();
    cells.values().forEach(mine -> values.add(row(mine, operators)));
    return new Cells(List.copyOf(cells.keySet()), List.copyOf(operators), values);
  }

  private static List<List<Double>> row(Map<String, List<Double>> mine, Set<String> operators) {
    return operators.stream().map(o -> mine.getOrDefault(o, List.of())).toList();
  }

  public List<Double> cell(int part, int operator) {
    return values.get(part).get(operator);
  }

  double mean(int part, int operator) {
    return mean(cell(part, operator));
  }

  /** Mean of all readings of a part. */
  public double partMean(int part) {
    return mean(values.get(part).stream().flatMap(List::stream).toList());
  }

  /** Number of readings. */
  public int size() {
    return values.stream().flatMap(List::stream).mapToInt(List::size).sum();
  }

  /** Cells with a reading. */
  int filled() {
    return (int) values.stream().flatMap(List::stream).filter(cell -> !cell.isEmpty()).count();
  }

  /** Whether every cell has a reading. */
  boolean isFull() {
    return filled() == parts.size() * operators.size();
  }

  /** Squares of the readings about their cells' means. */
  double within() {
    double sum = 0;
    for (List<List<Double>> row : values) {
      for (List<Double> cell : row) {
        double mean = mean(cell);
        sum += cell.stream().mapToDouble(v -> (v - mean) * (v - mean)).sum();
      }
    }
    return sum;
  }

  /**
   * Whether repeats, parts and operators can be told apart: some cell has a repeat, and every
   * operator shares a part with the others, directly or by way of them.
   */
  public boolean isConnected() {
    Set<Integer> reached = new LinkedHashSet<>(Set.of(0));
    boolean grew = true;
    while (grew) {
      grew = false;
      for (List<List<Double>> row : values) {
        Set<Integer> seen = new LinkedHashSet<>();
        for (int o = 0; o < operators.size(); o++) {
          if (!row.get(o).isEmpty()) {
            seen.add(o);
          }
        }
        if (seen.stream().anyMatch(reached::contains)) {
          grew |= reached.addAll(seen);
        }
      }
    }
    return reached.size() == operators.size() && size() > filled();
  }

  private static double mean(List<Double> values) {
    return values.stream().mapToDouble(v -> v).average().orElse(0);
  }
}
