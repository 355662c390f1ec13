package leadlight.quality.gauge;

import static java.util.stream.Collectors.toList;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import leadlight.quality.Estimate;
import leadlight.quality.grades.Grades;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Bias against known values, and linearity: whether the bias grows with the value (AIAG MSA, 4th
 * edition, III.B). Repeats of a part are no new part, and joints of one board are alike: intervals
 * leave out a board at a time (jackknife: Tukey 1958, Annals of Mathematical Statistics 29:614), by
 * t with boards less the figures fitted. A part that is no joint is a board of its own; where each
 * is, that is the t test of the mean, and linearity is by plain regression.
 *
 * @param parts parts with a known value
 * @param boards boards that they lie on
 * @param mean mean over the parts of reading minus known value, with 95 % interval
 * @param p significance of the mean, two-sided t test
 * @param slope change of the bias a unit of the value, with 95 % interval; empty if fewer than
 *     three boards or all of one value when any one is left out
 */
public record Bias(int parts, int boards, Estimate mean, double p, Optional<Estimate> slope) {

  private static final double TAIL = 0.025;

  /** Whether chance alone would give as large a mean in fewer than one study in twenty. */
  boolean isMoreThanChance() {
    return p < 2 * TAIL;
  }

  /** Whether an interval leaves no room for none. */
  static boolean isBeyondNone(Estimate e) {
    return e.lower() > 0 || e.upper() < 0;
  }

  /** A reading of a part whose value is known. */
  public record Known(String part, double reference, double value) {}

  /** A part: its known value, and mean of reading minus that. */
  private record Part(String board, double reference, double bias) {}

  /** Computes both; empty for fewer than two boards. */
  public static Optional<Bias> of(List<Known> readings) {
    List<Part> parts = parts(readings);
    Map<String, List<Part>> boards =
        parts.stream().collect(Collectors.groupingBy(Part::board, TreeMap::new, toList()));
    int free = boards.size() - 1;
    if (free < 1) {
      return Optional.empty();
    }
    double mean = mean(parts);
    double error = error(boards, Bias::mean);
    double p = error > 0 ? p(mean / error, free) : mean == 0 ? 1 : 0;
    return Optional.of(
        new Bias(parts.size(), boards.size(), interval(mean, error, free), p, slope(boards)));
  }

  /** Mean over the parts of reading minus known value; NaN without any. */
  static double meanOf(List<Known> readings) {
    return mean(parts(readings));
  }

  private static List<Part> parts(List<Known> readings) {
    Map<String, List<Known>> byPart =
        readings.stream().collect(Collectors.groupingBy(Known::part, LinkedHashMap::new, toList()));
    return byPart.entrySet().stream()
        .map(
            part ->
                new Part(
                    Grades.cluster(part.getKey()),
                    mean(part.getValue(), Known::reference),
                    mean(part.getValue(), r -> r.value - r.reference)))
        .toList();
  }

  private static Optional<Estimate> slope(Map<String, List<Part>> boards) {
    List<Part> parts = boards.values().stream().flatMap(List::stream).toList();
    int free = boards.size() - 2;
    if (free < 1) {
      return Optional.empty();
    }
    double error =
        boards.size() == parts.size() ? regression(parts, free) : error(boards, Bias::slope);
    return Double.isNaN(error)
        ? Optional.empty()
        : Optional.of(interval(slope(parts), error, free));
  }

  /** Standard error of the slope where every part stands alone. */
  private static double regression(List<Part> parts, int free) {
    double xx = cross(parts, Part::reference, Part::reference);
    double slope = slope(parts);
    double rest = cross(parts, Part::bias, Part::bias);
    rest -= slope * cross(parts, Part::reference, Part::bias);
    return Math.sqrt(Math.max(0, rest) / free / xx);
  }

  /** Standard error by leaving out a board at a time. */
  private static double error(
      Map<String, List<Part>> boards, ToDoubleFunction<List<Part>> statistic) {
    List<Double> without =
        boards.keySet().stream()
            .map(
                out ->
                    boards.entrySet().stream()
                        .filter(board -> !board.getKey().equals(out))
                        .flatMap(board -> board.getValue().stream())
                        .toList())
            .map(statistic::applyAsDouble)
            .toList();
    double n = without.size();
    return Math.sqrt((n - 1) / n * cross(without, v -> v, v -> v));
  }

  private static double mean(List<Part> parts) {
    return mean(parts, Part::bias);
  }

  /** NaN where all known values are one. */
  private static double slope(List<Part> parts) {
    double xx = cross(parts, Part::reference, Part::reference);
    return xx > 0 ? cross(parts, Part::reference, Part::bias) / xx : Double.NaN;
  }

  private static Estimate interval(double value, double error, int free) {
    double half = TDistribution.of(free).inverseSurvivalProbability(TAIL) * error;
    return new Estimate(value, value - half, value + half);
  }

  private static double p(double t, int free) {
    return 2 * TDistribution.of(free).survivalProbability(Math.abs(t));
  }

  private static <T> double mean(List<T> all, ToDoubleFunction<T> value) {
    return all.stream().mapToDouble(value).average().orElse(Double.NaN);
  }

  private static <T> double cross(List<T> all, ToDoubleFunction<T> a, ToDoubleFunction<T> b) {
    double meanA = mean(all, a);
    double meanB = mean(all, b);
    return all.stream()
        .mapToDouble(one -> (a.applyAsDouble(one) - meanA) * (b.applyAsDouble(one) - meanB))
        .sum();
  }
}
