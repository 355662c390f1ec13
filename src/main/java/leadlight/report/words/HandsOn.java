package leadlight.report.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * The joints as lines of text: defects one by one, then what is unjudged and what was seen of the
 * others, equal things together.
 */
public final class HandsOn {

  private static final String LINE = "  %7s  %-10s  ";
  private static final String UNDER_LAST_COLUMN = " ".repeat(LINE.formatted("", "").length());
  private static final Sentences SENTENCES = Sentences.english();

  private HandsOn() {}

  public static List<String> lines(List<GradedJoint> joints) {
    List<String> lines = new ArrayList<>();
    Set<String> todo = new LinkedHashSet<>();
    for (GradedJoint joint : joints) {
      if (joint.verdict() == Verdict.DEFECT) {
        List<Finding> grave =
            Sentences.spoken(
                joint.findings().stream().filter(f -> f.verdict() == Verdict.DEFECT).toList());
        String what =
            grave.stream()
                .map(f -> SENTENCES.sure(f, Words.label(f)))
                .collect(Collectors.joining("; "));
        lines.addAll(line("" + joint.pin(), joint.verdict(), what));
        grave.forEach(f -> todo.add(Words.kind(f.kind()) + ": " + SENTENCES.settle(f)));
      }
    }
    doubts(joints, SENTENCES)
        .forEach(
            (why, pins) -> {
              lines.addAll(line(Words.pins(pins), Verdict.UNJUDGED, why.get(0)));
              why.stream()
                  .skip(1)
                  .forEach(
                      more ->
                          lines.addAll(
                              Columns.wrapped(UNDER_LAST_COLUMN, more, UNDER_LAST_COLUMN)));
            });
    if (!lines.isEmpty()) {
      lines.add(0, (LINE + "%s").formatted("pin", "verdict", "what"));
    }
    if (!todo.isEmpty()) {
      lines.add("  at the bench:");
      todo.forEach(text -> lines.addAll(Columns.wrapped("  - ", text, "    ")));
    }
    return lines;
  }

  /** Why joints are not judged, with their pins: those of the same topics together. */
  public static Map<List<String>, List<Integer>> doubts(
      List<GradedJoint> joints, Sentences sentences) {
    Map<List<String>, List<GradedJoint>> groups = new LinkedHashMap<>();
    for (GradedJoint joint : joints) {
      if (!joint.doubts().isEmpty()) {
        groups
            .computeIfAbsent(
                joint.doubts().stream().map(Doubt::topic).distinct().toList(),
                topics -> new ArrayList<>())
            .add(joint);
      }
    }
    Map<List<String>, List<Integer>> lines = new LinkedHashMap<>();
    for (List<GradedJoint> group : groups.values()) {
      lines.put(why(group, sentences), group.stream().map(GradedJoint::pin).toList());
    }
    return lines;
  }

  /** The sentences of one joint, or what holds for all of several. */
  private static List<String> why(List<GradedJoint> group, Sentences sentences) {
    List<Doubt> first = group.get(0).doubts();
    boolean equal = group.stream().allMatch(joint -> joint.doubts().equals(first));
    return equal ? sentences.of(first) : first.stream().map(sentences::general).distinct().toList();
  }

  /** What the verdicts rest on: "seen at 1-3, 7: lead, fillet at the toe". */
  public static List<String> grounds(List<GradedJoint> joints) {
    Map<List<String>, List<GradedJoint>> groups = new LinkedHashMap<>();
    for (GradedJoint joint : joints) {
      if (!joint.grounds().isEmpty()) {
        groups
            .computeIfAbsent(
                joint.grounds().stream().map(Note::code).toList(), codes -> new ArrayList<>())
            .add(joint);
      }
    }
    return groups.values().stream()
        .map(
            group ->
                Words.pins(group.stream().map(GradedJoint::pin).toList())
                    + " "
                    + SENTENCES.seen(group.get(0).grounds()))
        .toList();
  }

  private static List<String> line(String pins, Verdict verdict, String what) {
    return Columns.wrapped(
        LINE.formatted(pins, VerdictWords.plain(verdict)), what, UNDER_LAST_COLUMN);
  }
}
