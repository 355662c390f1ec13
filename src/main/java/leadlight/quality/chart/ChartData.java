package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leadlight.quality.Days;
import leadlight.quality.LeftOut;
import leadlight.quality.Table;
import leadlight.quality.grades.Reading;

/**
 * Subgroups and findings from a table, in one of two forms: counts (columns group, units, count) or
 * joints (verdict, finding if there, board for u charts, and the column to group by).
 *
 * @param groups in the table's order, or sorted as numbers or text for joints
 * @param findings of nonconforming joints; empty for counts
 * @param looked judged joints in the order of their days, if they have one
 * @param left what was not counted and why, a sentence each
 */
public record ChartData(
    List<Subgroup> groups,
    List<String> findings,
    List<RareEvents.Looked> looked,
    List<String> left) {

  /** How a table names the finding that joints are grouped by. */
  private static final String FINDING = "finding";

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
        : joints(table, kind, by, words);
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
    return new ChartData(groups, List.of(), List.of(), List.of());
  }

  private static ChartData joints(Table table, ChartKind kind, String by, Reading words) {
    List<Graded> joints = new ArrayList<>();
    List<RareEvents.Looked> looked = new ArrayList<>();
    List<Table.Row> rows = StageRows.last(table, by);
    int open = 0;
    for (Table.Row row : rows) {
      String verdict = row.text("verdict");
      String side =
          words.side(verdict).orElseThrow(() -> row.trouble("verdict", words.unknown(verdict)));
      if (side.equals(Reading.OPEN)) {
        open++;
        continue;
      }
      String board = kind == ChartKind.U ? row.text("board") : "";
      List<String> findings =
          row.maybe(FINDING).stream()
              .flatMap(f -> Arrays.stream(f.split(";")))
              .map(String::strip)
              .toList();
      boolean bad = side.equals(Reading.BAD);
      joints.add(new Graded(group(row, by), board, bad, findings));
      looked.add(new RareEvents.Looked(row.maybe("day").orElse(""), bad));
    }
    List<String> left = new ArrayList<>();
    if (rows.size() < table.rows().size()) {
      left.add(
          LeftOut.ofStages(
              table.rows().size() - rows.size(), "joint", "earlier", LeftOut.LAST_STAGE));
    }
    if (open > 0) {
      left.add(LeftOut.undecided(open));
    }
    return of(joints, looked, left, kind, by);
  }

  private static String group(Table.Row row, String by) {
    if (by.equals(FINDING)) {
      return "";
    }
    String name = row.text(by);
    if (by.equals("day") && Days.of(name).isEmpty()) {
      throw row.trouble("day", "\"" + name + "\" is no date; write it as 2026-11-25");
    }
    return name;
  }

  /** Counts joints from wherever they come. */
  public static ChartData of(
      List<Graded> joints,
      List<RareEvents.Looked> looked,
      List<String> left,
      ChartKind kind,
      String by) {
    ChartData counted = by.equals(FINDING) ? byFinding(joints) : of(joints, kind);
    List<RareEvents.Looked> sorted = new ArrayList<>(looked);
    if (looked.stream().allMatch(joint -> Days.of(joint.day()).isPresent())) {
      sorted.sort(Comparator.comparing(joint -> Days.of(joint.day()).orElseThrow()));
    }
    return new ChartData(counted.groups, counted.findings, sorted, left);
  }

  /** Every finding with all judged joints as its opportunities. */
  private static ChartData byFinding(List<Graded> joints) {
    List<String> findings = of(joints, ChartKind.P).findings;
    List<Subgroup> groups =
        Pareto.of(findings).bars().stream()
            .map(bar -> new Subgroup(bar.cause(), joints.size(), bar.count()))
            .toList();
    return new ChartData(groups, findings, List.of(), List.of());
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
    groups.sort(Comparator.comparing(Subgroup::name, Days.order(List.copyOf(counted.keySet()))));
    return new ChartData(groups, findings, List.of(), List.of());
  }

  private static final class Counted {
    private final Set<String> boards = new LinkedHashSet<>();
    private int joints;
    private int defects;
  }
}
