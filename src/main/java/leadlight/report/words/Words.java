package leadlight.report.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.row.RowSpec;
import leadlight.text.VerdictWords;

/** Verdicts, findings and pins as people read them. */
public final class Words {

  /** Worst first, as a report lists them. */
  public static final String NO_CERTIFICATE = "Leadlight does not certify a board.";

  private Words() {}

  public static String kind(FindingKind kind) {
    return kind.id().replace('-', ' ');
  }

  /** "bridge 5-6", "open". */
  public static String finding(Finding finding) {
    return finding.kind().id() + (finding.pins().size() > 1 ? " " + pins(finding.pins()) : "");
  }

  /** "side overhang", "bridge 5-6": for a place at the joint itself. */
  public static String label(Finding finding) {
    return kind(finding.kind()) + (finding.pins().size() > 1 ? " " + pins(finding.pins()) : "");
  }

  /** "1 defect", "2 defects", "0 acceptable". */
  public static String counted(int count, Verdict verdict) {
    boolean thing = verdict == Verdict.DEFECT || verdict == Verdict.PROCESS_INDICATOR;
    return count + " " + VerdictWords.plain(verdict) + (thing && count != 1 ? "s" : "");
  }

  /** "1-3, 7" of 3, 1, 2, 7. */
  public static String pins(List<Integer> pins) {
    List<Integer> sorted = pins.stream().distinct().sorted().toList();
    List<String> runs = new ArrayList<>();
    for (int i = 0; i < sorted.size(); ) {
      int end = i;
      while (end + 1 < sorted.size() && sorted.get(end + 1) == sorted.get(end) + 1) {
        end++;
      }
      runs.add(end == i ? "" + sorted.get(i) : sorted.get(i) + "-" + sorted.get(end));
      i = end + 1;
    }
    return String.join(", ", runs);
  }

  /** "2 defects, 1 not judged, 16 acceptable"; verdicts that nobody got are left out. */
  public static String counts(List<GradedJoint> joints) {
    Map<Verdict, Integer> counts = count(joints);
    return Verdict.WORST_FIRST.stream()
        .filter(counts::containsKey)
        .map(verdict -> counted(counts.get(verdict), verdict))
        .collect(Collectors.joining(", "));
  }

  public static Map<Verdict, Integer> count(List<GradedJoint> joints) {
    Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
    joints.forEach(joint -> counts.merge(joint.verdict(), 1, Integer::sum));
    return counts;
  }

  /** "usb-c-16, 12 joints at 0.5 mm, class 2". */
  public static String job(RowSpec row, int productClass) {
    String part = row.connectorId().equals("plain") ? "plain row" : row.connectorId();
    return String.format(
        Locale.ROOT,
        "%s, %d joints at %s mm, class %d",
        part,
        row.leads(),
        Rounded.to(row.pitchMm(), 3).toPlainString(),
        productClass);
  }
}
