package leadlight.report.strip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntToDoubleFunction;
import java.util.stream.Collectors;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.report.paint.Sheet;
import leadlight.report.paint.TextStyle;
import leadlight.report.words.PictureWords;
import leadlight.text.Sentences;
import leadlight.text.VerdictWords;

/**
 * The findings of a strip in words below its pins. Each label starts at its own leader and runs to
 * the right; one that would run over the leaders of labels further right goes one level below them
 * all, so labels never collide and leaders cross nothing; one that would run over the sheet's edge
 * goes on in a line below. Where that would take too many levels the labels run down at an angle
 * instead, one behind the other.
 */
final class Callouts {

  static final TextStyle STYLE = TextStyle.BODY_BOLD;

  private static final int MOST_LEVELS = 4;
  private static final double GAP_PX = 14;

  /** From a leader to its words. */
  static final int BESIDE_LEADER_PX = 6;

  /**
   * A label.
   *
   * @param xPx where the first of its pins is
   * @param endPx where the last of its pins is; as {@code xPx} for a single pin
   * @param firstGapPx distance to the next pin
   * @param text words
   * @param bridge whether it stands for a bridge between the pins
   */
  record Label(double xPx, double endPx, double firstGapPx, String text, boolean bridge) {

    /** Where its leader comes down: below the first pin, for a bridge below the first gap. */
    double leaderPx() {
      return bridge ? xPx + firstGapPx / 2 : xPx;
    }
  }

  private final List<Label> labels;
  private final List<List<String>> lines;
  private final int[] levels;

  Callouts(List<Label> labels) {
    this.labels = labels.stream().sorted(Comparator.comparingDouble(Label::leaderPx)).toList();
    this.lines = this.labels.stream().map(Callouts::wrapped).toList();
    this.levels = new int[labels.size()];
    for (int i = levels.length - 1; i >= 0; i--) {
      double end = this.labels.get(i).leaderPx() + widthPx(i) + GAP_PX;
      for (int j = i + 1; j < levels.length && this.labels.get(j).leaderPx() < end; j++) {
        levels[i] = Math.max(levels[i], levels[j] + lines.get(j).size());
      }
    }
  }

  /** A label in lines that end at the sheet's edge. */
  private static List<String> wrapped(Label label) {
    return STYLE.wrapped(label.text(), roomPx(label));
  }

  private static double roomPx(Label label) {
    return Sheet.CONTENT_PX - label.leaderPx() - BESIDE_LEADER_PX;
  }

  private double widthPx(int label) {
    return lines.get(label).stream().mapToDouble(STYLE::width).max().orElse(0);
  }

  /** The labels of a strip; {@code acrossPx} says where the land of a joint's index lies. */
  static Callouts of(
      List<GradedJoint> joints,
      List<Integer> strip,
      IntToDoubleFunction acrossPx,
      PictureWords said) {
    List<Label> labels = new ArrayList<>(bridges(joints, strip, acrossPx, said));
    for (int i = 0; i < strip.size(); ) {
      String text = words(joints, strip, i, said);
      int end = i;
      while (end + 1 < strip.size()
          && words(joints, strip, end + 1, said).equals(text)
          && !bridged(joints.get(strip.get(end)), joints.get(strip.get(end + 1)))) {
        end++;
      }
      if (!text.isEmpty()) {
        double from = acrossPx.applyAsDouble(strip.get(i));
        labels.add(new Label(from, acrossPx.applyAsDouble(strip.get(end)), 0, text, false));
      }
      i = end + 1;
    }
    return new Callouts(labels);
  }

  private static List<Label> bridges(
      List<GradedJoint> joints,
      List<Integer> strip,
      IntToDoubleFunction acrossPx,
      PictureWords said) {
    List<Label> labels = new ArrayList<>();
    for (int i = 0; i + 1 < strip.size(); i++) {
      int end = i;
      while (end + 1 < strip.size()
          && bridged(joints.get(strip.get(end)), joints.get(strip.get(end + 1)))) {
        end++;
      }
      if (end > i) {
        labels.add(
            new Label(
                acrossPx.applyAsDouble(strip.get(i)),
                acrossPx.applyAsDouble(strip.get(end)),
                acrossPx.applyAsDouble(strip.get(i + 1)) - acrossPx.applyAsDouble(strip.get(i)),
                said.kind(FindingKind.BRIDGE),
                true));
        i = end;
      }
    }
    return labels;
  }

  private static boolean bridged(GradedJoint one, GradedJoint other) {
    return bridges(one, other.pin()) || bridges(other, one.pin());
  }

  private static boolean bridges(GradedJoint joint, int toPin) {
    return joint.findings().stream()
        .anyMatch(f -> f.kind() == FindingKind.BRIDGE && f.pins().contains(toPin));
  }

  /** What is wrong with the joint itself; bridges that the strip shows have labels of their own. */
  private static String words(
      List<GradedJoint> joints, List<Integer> strip, int place, PictureWords said) {
    GradedJoint joint = joints.get(strip.get(place));
    boolean tied =
        (place > 0 && bridged(joints.get(strip.get(place - 1)), joint))
            || (place + 1 < strip.size() && bridged(joint, joints.get(strip.get(place + 1))));
    Set<String> words =
        Sentences.spoken(joint.findings()).stream()
            .filter(f -> f.kind() != FindingKind.BRIDGE || !tied)
            .sorted(Comparator.comparing(Finding::verdict).reversed())
            .map(said::label)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    String text = String.join(", ", words);
    if (joint.verdict() == Verdict.UNJUDGED) {
      String unjudged = VerdictWords.of(Verdict.UNJUDGED, said.words());
      return text.isEmpty() ? unjudged : unjudged + ": " + text;
    }
    return text;
  }

  List<Label> labels() {
    return labels;
  }

  /** What a label says, line by line, each one level below the one before. */
  List<String> lines(int label) {
    return lines.get(label);
  }

  /** What a label says in one line at an angle, cut at the sheet's edge. */
  String cut(int label, double slantRad) {
    Label it = labels.get(label);
    return STYLE.cut(it.text(), roomPx(it) / Math.cos(slantRad));
  }

  /** Level of a label, 0 right below the pins. */
  int level(int label) {
    return levels[label];
  }

  /** Whether the labels are level; else they run down at an angle. */
  boolean level() {
    return levels() <= MOST_LEVELS;
  }

  int levels() {
    int most = 0;
    for (int i = 0; i < levels.length; i++) {
      most = Math.max(most, levels[i] + lines.get(i).size());
    }
    return most;
  }

  double widestPx() {
    return labels.stream().mapToDouble(label -> STYLE.width(label.text())).max().orElse(0);
  }
}
