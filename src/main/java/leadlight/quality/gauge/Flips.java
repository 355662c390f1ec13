package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import leadlight.quality.grades.Grades;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;

/**
 * How often the verdict of a part changes over repeats. Joints of one board ("BOARD pin 3") are
 * photographed together, so a blurred photo changes them all: rates are by board, or by part where
 * parts are no joints.
 *
 * @param parts verdicts other than the part's most frequent one, of all its verdicts
 * @param undecided verdicts that decide nothing, of all, by part
 * @param operators verdicts other than the part's most frequent one, by operator
 */
public record Flips(
    Map<String, Rate> parts, Map<String, Rate> undecided, Map<String, ClusterRate> operators) {

  /**
   * A verdict.
   *
   * @param part of which part
   * @param operator by whom, or under which lamp or set-up
   * @param verdict category
   */
  public record Said(String part, String operator, String verdict) {}

  /** Counts. */
  public static Flips of(List<Said> verdicts, Set<String> open) {
    Map<String, List<String>> byPart = new LinkedHashMap<>();
    verdicts.forEach(
        v -> byPart.computeIfAbsent(v.part(), p -> new ArrayList<>()).add(v.verdict()));
    Map<String, Rate> flips = new LinkedHashMap<>();
    Map<String, Rate> undecided = new LinkedHashMap<>();
    byPart.forEach(
        (part, said) -> {
          int most = said.stream().mapToInt(s -> Collections.frequency(said, s)).max().orElse(0);
          flips.put(part, new Rate(said.size() - most, said.size()));
          int unsaid = (int) said.stream().filter(open::contains).count();
          undecided.put(part, new Rate(unsaid, said.size()));
        });
    return new Flips(flips, undecided, byOperator(verdicts, byPart));
  }

  private static Map<String, ClusterRate> byOperator(
      List<Said> verdicts, Map<String, List<String>> byPart) {
    Map<String, ClusterRate.Builder> operators = new TreeMap<>();
    for (Said said : verdicts) {
      operators
          .computeIfAbsent(said.operator(), who -> new ClusterRate.Builder())
          .add(Grades.cluster(said.part()), !said.verdict().equals(usual(byPart.get(said.part()))));
    }
    Map<String, ClusterRate> rates = new TreeMap<>();
    operators.forEach((who, counted) -> rates.put(who, counted.rate()));
    return rates;
  }

  /** The most frequent verdict, the first of equals. */
  private static String usual(List<String> said) {
    return said.stream()
        .max(
            Comparator.comparingInt((String s) -> Collections.frequency(said, s))
                .thenComparing(s -> -said.indexOf(s)))
        .orElseThrow();
  }

  /** Parts that flip at least once, of all. */
  public ClusterRate flipping() {
    ClusterRate.Builder all = new ClusterRate.Builder();
    parts.forEach((part, rate) -> all.add(Grades.cluster(part), rate.count() > 0));
    return all.rate();
  }

  /** Verdicts that are not their part's most frequent, of all. */
  public ClusterRate verdicts() {
    ClusterRate.Builder all = new ClusterRate.Builder();
    parts.forEach((part, rate) -> all.add(Grades.cluster(part), rate.count(), rate.of()));
    return all.rate();
  }
}
