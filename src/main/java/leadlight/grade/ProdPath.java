package leadlight.grade;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;

/**
 * An order of prodding leads with few movements of the hand: neighbours are prodded in one go, the
 * group that holds the most suspect lead first, each from its more suspect end.
 */
final class ProdPath {

  private ProdPath() {}

  /**
   * The pins in that order.
   *
   * @param suspicions how suspect each pin's lead is, by pin
   */
  static List<Integer> of(SortedMap<Integer, Double> suspicions) {
    return groups(suspicions.keySet()).stream()
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
