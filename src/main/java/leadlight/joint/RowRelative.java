package leadlight.joint;

import java.util.List;

/**
 * Adds to each signal how far it stands from the row's median, in the row's own spread, under the
 * name {@code row_NAME}. "Unlike its neighbours" is evidence, never the criterion: the absolute
 * signals stay. Some medians are given as well, {@code typical_NAME}: they tell what the lamp makes
 * of this row.
 */
final class RowRelative {

  /** Added to the spread: below this share of the row's light a difference means nothing. */
  private static final double FLOOR = 0.03;

  /** Beyond this many spreads farther is no stronger. */
  private static final double MOST = 12;

  private RowRelative() {}

  static void add(List<Signals> row, List<String> typical) {
    if (row.isEmpty()) {
      return;
    }
    typical.forEach(name -> addTypical(row, name));
    for (String name : names(row)) {
      double[] values = row.stream().mapToDouble(signals -> signals.get(name)).toArray();
      double middle = Stats.median(values);
      double spread = Stats.spread(values) + FLOOR;
      for (int i = 0; i < values.length; i++) {
        double distance = (values[i] - middle) / spread;
        row.get(i).put("row_" + name, Math.max(-MOST, Math.min(MOST, distance)));
      }
    }
  }

  /** What a row typically shows is no signal of one joint: it is not compared with itself. */
  private static List<String> names(List<Signals> row) {
    return row.get(0).asMap().keySet().stream()
        .filter(name -> !name.startsWith("typical_"))
        .toList();
  }

  private static void addTypical(List<Signals> row, String name) {
    double median = Stats.median(row.stream().mapToDouble(signals -> signals.get(name)).toArray());
    row.forEach(signals -> signals.put("typical_" + name, median));
  }
}
