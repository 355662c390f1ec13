package leadlight.report.words;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.Set;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;

/**
 * What is to be done to a joint, in the order in which one would do it, and with what: the one
 * source of rework lists, tables and the bench page. A missing lead comes first, since it may make
 * all else vain; then bridges by the harm they do, open, starved, overloaded and misplaced leads;
 * what only needs cleaning is last. Only defects are touched: a needless re-heat is harm. A joint
 * is worked on once, under its gravest kind of trouble. The order and the tools are common
 * practice, no source.
 */
public enum Task {
  MISSING("missing", "tweezers", FindingKind.MISSING_LEAD),
  BRIDGES("bridges", "wick", FindingKind.BRIDGE),
  OPENS("opens", "iron", FindingKind.OPEN),
  STARVED("starved", "iron", FindingKind.INSUFFICIENT),
  EXCESS("excess", "wick", FindingKind.EXCESS),
  MISPLACED(
      "misplaced",
      "hot-air",
      FindingKind.SIDE_OVERHANG,
      FindingKind.TOE_OVERHANG,
      FindingKind.SKEWED_LEAD),
  OTHER("other", "brush", FindingKind.SOLDER_BALL, FindingKind.VOID, FindingKind.RESIDUE),
  /** The photo does not decide it: prod, meter or look first. */
  SETTLE("settle", "probe"),
  /** No iron. */
  LEAVE("leave", "");

  private final String id;
  private final String tool;
  private final Set<FindingKind> kinds = EnumSet.noneOf(FindingKind.class);

  Task(String id, String tool, FindingKind... kinds) {
    this.id = id;
    this.tool = tool;
    this.kinds.addAll(Set.of(kinds));
  }

  /** The name in files and word lists. */
  public String id() {
    return id;
  }

  /** The tool's name in files and word lists; empty where none is needed. */
  public String tool() {
    return tool;
  }

  /** The order of the work: as above, but each tool is taken up once. */
  public static Comparator<Task> byTool() {
    return Comparator.comparing(Task::firstWithTool).thenComparing(Comparator.naturalOrder());
  }

  private Task firstWithTool() {
    return Arrays.stream(values()).filter(task -> task.tool.equals(tool)).findFirst().orElse(this);
  }

  /** True if hands are to touch the joint. */
  public boolean touches() {
    return compareTo(SETTLE) < 0;
  }

  /** What is to be done to a joint as it counts. */
  public static Task of(GradedJoint joint) {
    if (joint.verdict() != Verdict.DEFECT) {
      return joint.verdict() == Verdict.UNJUDGED ? SETTLE : LEAVE;
    }
    for (Task task : values()) {
      for (Finding finding : joint.findings()) {
        if (task.kinds.contains(finding.kind()) && finding.verdict() == Verdict.DEFECT) {
          return task;
        }
      }
    }
    return OTHER;
  }
}
