package leadlight.grade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An order of prodding leads: the most suspect first, with few movements of the hand. Of many leads
 * the most suspect share comes before the others, since a row that is unjudged throughout would
 * else be prodded from end to end; within each part neighbours are prodded in one go, the group
 * that holds the most suspect lead first, each from its more suspect end.
 */
final class ProdPath {

  private ProdPath() {}

  /**
   * The pins in that order.
   *
   * @param suspicions how suspect each pin's lead is, by pin
   * @param firstShare share of the leads that comes before the others
   */
  static List<Integer> of(SortedMap<Integer, Double> suspicions, double firstShare) {
    int first = (int) Math.ceil(firstShare * suspicions.size());
    Set<Integer> most =
        suspicions.keySet().stream()
            .sorted(
                Comparator.<Integer>comparingDouble(pin -> -suspicions.get(pin))
                    .thenComparing(Comparator.naturalOrder()))
            .limit(first)
            .collect(Collectors.toCollection(TreeSet::new));
    Set<Integer> others = new TreeSet<>(suspicions.keySet());
    others.removeAll(most);
    return Stream.of(most, others).flatMap(part -> inGroups(part, suspicions).stream()).toList();
  }

  private static List<Integer> inGroups(Set<Integer> pins, Map<Integer, Double> suspicions) {
    return groups(pins).stream()
        .sorted(
            Comparator.<List<Integer>>comparingDouble(
                    group -> -group.stream().mapToDouble(suspicions::get).max().orElse(0))
                .thenComparing(group -> group.get(0)))
        .flatMap(group -> fromItsEnd(group, suspicions).stream())
        .toList();
  }

  private static List<List<Integer>> groups(Iterable<Integer> pins) {
    List<List<Integer>> groups = new ArrayList<>();
    int last = Integer.MIN_VALUE;
    for (int pin : pins) {
      if (pin - 1 != last) {
        groups.add(new ArrayList<>());
      }
      groups.get(groups.size() - 1).add(pin);
      last = pin;
    }
    return groups;
  }

  private static List<Integer> fromItsEnd(List<Integer> group, Map<Integer, Double> suspicions) {
    double first = suspicions.get(group.get(0));
    double last = suspicions.get(group.get(group.size() - 1));
    if (last > first) {
      Collections.reverse(group);
    }
    return group;
  }
}
