package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
   * Joints that are alike.
   *
   * @param group day, connector, operator or pin
   * @param defect true if they count as such
   * @param findings what each of them is, if named
   * @param joints how many
   */
  public record Graded(String group, boolean defect, List<String> findings, int joints) {}

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
    Map<String, Set<String>> boards = new HashMap<>();
    List<Table.Row> rows = StageRows.last(table, by);
    for (Table.Row row : rows) {
      String verdict = row.text("verdict");
      String side =
          words.side(verdict).orElseThrow(() -> row.trouble("verdict", words.unknown(verdict)));
      if (side.equals(Reading.OPEN)) {
        continue;
      }
      boolean bad = side.equals(Reading.BAD);
      Graded joint = new Graded(group(row, by), bad, findings(row), 1);
      joints.add(joint);
      if (kind == ChartKind.U) {
        boards.computeIfAbsent(joint.group, g -> new HashSet<>()).add(row.text("board"));
      }
      looked.add(new RareEvents.Looked(row.maybe("day").orElse(""), bad));
    }
    Map<String, Integer> units = new HashMap<>();
    boards.forEach((group, names) -> units.put(group, names.size()));
    ChartData counted = of(joints, units, by);
    List<String> left = left(table.rows().size() - rows.size(), rows.size() - joints.size());
    return new ChartData(counted.groups, counted.findings, sorted(looked), left);
  }

  private static List<String> findings(Table.Row row) {
    return row.maybe(FINDING).stream()
        .flatMap(f -> Arrays.stream(f.split(";")))
        .map(String::strip)
        .toList();
  }

  private static List<String> left(int earlier, int open) {
    List<String> left = new ArrayList<>();
    if (earlier > 0) {
      left.add(LeftOut.ofStages(earlier, "joint", "earlier", LeftOut.LAST_STAGE));
    }
    if (open > 0) {
      left.add(LeftOut.undecided(open));
    }
    return left;
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

  /** Judged joints one by one, for charts of rare events. */
  public static ChartData inOrder(List<RareEvents.Looked> looked) {
    return new ChartData(List.of(), List.of(), looked, List.of());
  }

  private static List<RareEvents.Looked> sorted(List<RareEvents.Looked> looked) {
    List<RareEvents.Looked> sorted = new ArrayList<>(looked);
    if (looked.stream().allMatch(joint -> Days.of(joint.day()).isPresent())) {
      sorted.sort(Comparator.comparing(joint -> Days.of(joint.day()).orElseThrow()));
    }
    return sorted;
  }

  /**
   * Counts joints from wherever they come.
   *
   * @param boards for a u chart: on how many boards the joints of each group are; empty if a
   *     group's unit is the joint
   */
  public static ChartData of(List<Graded> joints, Map<String, Integer> boards, String by) {
    return by.equals(FINDING) ? byFinding(joints) : byGroup(joints, boards);
  }

  /** Every finding with all judged joints as its opportunities. */
  private static ChartData byFinding(List<Graded> joints) {
    List<String> findings = byGroup(joints, Map.of()).findings;
    int all = joints.stream().mapToInt(Graded::joints).sum();
    List<Subgroup> groups =
        Pareto.of(findings).bars().stream()
            .map(bar -> new Subgroup(bar.cause(), all, bar.count()))
            .toList();
    return new ChartData(groups, findings, List.of(), List.of());
  }

  private static ChartData byGroup(List<Graded> joints, Map<String, Integer> boards) {
    Map<String, Counted> counted = new LinkedHashMap<>();
    List<String> findings = new ArrayList<>();
    for (Graded joint : joints) {
      Counted group = counted.computeIfAbsent(joint.group(), g -> new Counted());
      group.joints += joint.joints;
      if (joint.defect()) {
        group.defects += joint.joints;
        List<String> named = joint.findings().isEmpty() ? List.of("not named") : joint.findings();
        named.forEach(kind -> findings.addAll(Collections.nCopies(joint.joints, kind)));
      }
    }
    List<Subgroup> groups = new ArrayList<>();
    counted.forEach(
        (name, c) ->
            groups.add(new Subgroup(name, boards.getOrDefault(name, c.joints), c.defects)));
    groups.sort(Comparator.comparing(Subgroup::name, Days.order(List.copyOf(counted.keySet()))));
    return new ChartData(groups, findings, List.of(), List.of());
  }

  private static final class Counted {
    private int joints;
    private int defects;
  }
}
