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
   * A joint.
   *
   * @param group day, connector, operator or pin
   * @param board on which board; any for charts that do not count boards
   * @param defect true if it counts as one
   * @param findings what it is, if named
   */
  public record Graded(String group, String board, boolean defect, List<String> findings) {}

  /**
   * Reads a table.
   *
   * @param by column to group joints by
   * @param words how verdicts are read
   * @throws UserError if a verdict is none that was named, with its line
   */
  public static ChartData read(Table table, ChartKind kind, String by, Reading words) {
    return table.has("units") && table.has("count")
        ? counts(table)
        : of(joints(table, kind, by, words), kind);
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

  private static List<Graded> joints(Table table, ChartKind kind, String by, Reading words) {
    List<Graded> joints = new ArrayList<>();
    for (Table.Row row : table.rows()) {
      String verdict = row.text("verdict");
      String side = words.side(verdict).orElseThrow(() -> row.trouble(words.unknown(verdict)));
      if (side.equals(Reading.OPEN)) {
        continue;
      }
      String board = kind == ChartKind.U ? row.text("board") : "";
      List<String> findings =
          row.maybe("finding").stream()
              .flatMap(f -> Arrays.stream(f.split(";")))
              .map(String::strip)
              .toList();
      joints.add(new Graded(row.text(by), board, side.equals(Reading.BAD), findings));
    }
    return joints;
  }

  /** Counts joints: their own number, or the boards they are on for a u chart. */
  public static ChartData of(List<Graded> joints, ChartKind kind) {
    Map<String, Counted> counted = new LinkedHashMap<>();
    List<String> findings = new ArrayList<>();
    for (Graded joint : joints) {
      Counted group = counted.computeIfAbsent(joint.group(), g -> new Counted());
      group.joints++;
      group.boards.add(joint.board());
      if (joint.defect()) {
        group.defects++;
        findings.addAll(joint.findings().isEmpty() ? List.of("not named") : joint.findings());
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
