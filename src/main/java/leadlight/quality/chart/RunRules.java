package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.DoublePredicate;

/**
 * The run rules of the Western Electric Statistical Quality Control Handbook (1956): tests for
 * unnatural patterns, each on one side of the centre.
 */
public final class RunRules {

  private static final List<Rule> RULES =
      List.of(
          new Rule("a point beyond three sigma", 1, 1, 3),
          new Rule("two of three beyond two sigma", 2, 3, 2),
          new Rule("four of five beyond one sigma", 4, 5, 1),
          new Rule("eight in a row on one side", 8, 8, 0));

  private record Rule(String words, int needed, int of, double beyond) {}

  /**
   * A rule that is met.
   *
   * @param rule in words
   * @param index place of the last point of the pattern, from 0
   * @param high true above the centre
   */
  public record Signal(String rule, int index, boolean high) {}

  private RunRules() {}

  /**
   * All signals.
   *
   * @param z distance of each point from the centre in standard deviations
   * @param ordered false leaves out the rules that need an order
   */
  public static List<Signal> of(List<Double> z, boolean ordered) {
    return of(z, ordered ? Set.of(1, 2, 3, 4) : Set.of(1));
  }

  /**
   * The signals of chosen rules.
   *
   * @param chosen numbers of the rules, 1 to 4
   */
  public static List<Signal> of(List<Double> z, Set<Integer> chosen) {
    List<Signal> signals = new ArrayList<>();
    for (int i = 0; i < z.size(); i++) {
      for (Rule rule : RULES) {
        if (chosen.contains(RULES.indexOf(rule) + 1)) {
          if (met(rule, z, i, v -> v > rule.beyond)) {
            signals.add(new Signal(rule.words, i, true));
          }
          if (met(rule, z, i, v -> -v > rule.beyond)) {
            signals.add(new Signal(rule.words, i, false));
          }
        }
      }
    }
    return signals;
  }

  private static boolean met(Rule rule, List<Double> z, int last, DoublePredicate beyond) {
    if (!beyond.test(z.get(last))) {
      return false;
    }
    List<Double> window = z.subList(Math.max(0, last - rule.of + 1), last + 1);
    return window.stream().filter(v -> beyond.test(v)).count() >= rule.needed;
  }
}
