package leadlight.quality;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Subgroups and findings from a table, in one of two forms: counts (columns group, units, count) or
 * joints (verdict, finding if there, board for u charts, and the column to group by).
 *
 * @param groups in the table's order, or sorted as numbers or text for joints
 * @param findings of nonconforming joints; empty for counts
 */
public record ChartData(List<Subgroup> groups, List<String> findings) {

  /**
   * Reads a table.
   *
   * @param by column to group joints by
   * @param bad verdicts that count as a defect
   */
  public static ChartData read(Table table, ChartKind kind, String by, Set<String> bad) {
    return table.has("units") && table.has("count") ? counts(table) : joints(table, kind, by, bad);
  }

  private static ChartData counts(Table table) {
    List<Subgroup> groups = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      int units = row.count("units");
      if (units == 0) {
        throw row.trouble("a subgroup of 0 units has no place on a chart; delete the line");
      }
      groups.add(new Subgroup(row.text("group"), units, row.count("count")));
    }
    return new ChartData(groups, List.of());
  }

  private static ChartData joints(Table table, ChartKind kind, String by, Set<String> bad) {
    Map<String, Counted> counted = new LinkedHashMap<>();
    List<String> findings = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      Counted group = counted.computeIfAbsent(row.text(by), g -> new Counted());
      group.joints++;
      if (kind == ChartKind.U) {
        group.boards.add(row.text("board"));
      }
      if (bad.contains(row.text("verdict"))) {
        group.defects++;
        row.maybe("finding")
            .ifPresentOrElse(
                f -> Arrays.stream(f.split(";")).map(String::strip).forEach(findings::add),
                () -> findings.add("not named"));
      }
    }
    List<Subgroup> groups = new ArrayList<>();
    counted.forEach(
        (name, c) ->
            groups.add(
                new Subgroup(name, kind == ChartKind.U ? c.boards.size() : c.joints, c.defects)));
    groups.sort(Comparator.comparing(Subgroup::name, ChartData::inOrder));
    return new ChartData(groups, findings);
  }

  /** Numbers by size, before text. */
  private static int inOrder(String a, String b) {
    boolean both = a.matches("\\d{1,9}") && b.matches("\\d{1,9}");
    return both ? Integer.compare(Integer.parseInt(a), Integer.parseInt(b)) : a.compareTo(b);
  }

  private static final class Counted {
    private final Set<String> boards = new LinkedHashSet<>();
    private int joints;
    private int defects;
  }
}
