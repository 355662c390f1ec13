package leadlight.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import leadlight.model.Finding;
import leadlight.model.GradedJoint;
import leadlight.model.Verdict;

/** The joints that need hands as lines of text: defects one by one, then what is unjudged. */
final class HandsOn {

  private static final String LINE = "  %7s  %-10s  ";
  private static final String UNDER_LAST_COLUMN = " ".repeat(LINE.formatted("", "").length());

  private HandsOn() {}

  static List<String> lines(List<GradedJoint> joints) {
    List<String> lines = new ArrayList<>();
    Set<String> todo = new LinkedHashSet<>();
    for (GradedJoint joint : joints) {
      if (joint.verdict() == Verdict.DEFECT) {
        List<Finding> grave =
            joint.findings().stream().filter(f -> f.verdict() == Verdict.DEFECT).toList();
        String what = grave.stream().map(HandsOn::sure).collect(Collectors.joining("; "));
        lines.addAll(line("" + joint.pin(), joint.verdict(), what));
        grave.stream()
            .filter(f -> !f.settleBy().isEmpty())
            .forEach(f -> todo.add(Words.kind(f.kind()) + ": " + f.settleBy()));
      }
    }
    lines.addAll(unjudged(joints));
    if (!lines.isEmpty()) {
      lines.add(0, (LINE + "%s").formatted("pin", "verdict", "what"));
    }
    if (!todo.isEmpty()) {
      lines.add("  at the bench:");
      todo.forEach(text -> lines.addAll(Columns.wrapped("  - ", text, "    ")));
    }
    return lines;
  }

  private static String sure(Finding finding) {
    // Rounded down: 99.9 % must not read as certain.
    return Words.label(finding) + ", " + (int) Math.floor(100 * finding.probability()) + " % sure";
  }

  /** Neighbours that are unjudged for one reason share a line. */
  private static List<String> unjudged(List<GradedJoint> joints) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      GradedJoint first = joints.get(i);
      if (first.verdict() == Verdict.UNJUDGED) {
        while (i + 1 < joints.size()
            && joints.get(i + 1).unjudgedBecause().equals(first.unjudgedBecause())) {
          i++;
        }
        int last = joints.get(i).pin();
        String pins = first.pin() + (last == first.pin() ? "" : "-" + last);
        lines.addAll(line(pins, first.verdict(), first.unjudgedBecause().orElseThrow()));
      }
    }
    return lines;
  }

  private static List<String> line(String pins, Verdict verdict, String what) {
    return Columns.wrapped(LINE.formatted(pins, Words.verdict(verdict)), what, UNDER_LAST_COLUMN);
  }
}
