package leadlight.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.Finding;
import leadlight.model.GradedJoint;
import leadlight.model.RowOutcome;
import leadlight.model.ScoredPhoto;
import leadlight.model.Verdict;

/** A scored photo in a few plain lines of at most 80 characters, worst first. */
public final class TerminalSummary {

  private static final int COLUMNS = 80;
  private static final String LINE = "  %7s  %-10s  %-14s  %s";

  private TerminalSummary() {}

  /**
   * The lines, without line ends and without colour. Only file names and paths may be longer than
   * 80 characters.
   *
   * @param written the files, if any were written
   */
  public static List<String> lines(ScoredPhoto scored, Optional<WrittenReport> written) {
    List<String> lines = new ArrayList<>();
    lines.add(scored.photo().file() + ": " + headline(scored));
    lines.addAll(
        wrapped("  ", Words.job(scored.settings().row(), scored.settings().productClass())));
    if (!scored.joints().isEmpty()) {
      lines.add("  " + Words.counts(scored.joints()));
    }
    if (scored.row() instanceof RowOutcome.NotFound none) {
      lines.addAll(wrapped("  ", none.reason()));
    }
    scored.fitness().forEach(sentence -> lines.addAll(wrapped("  photo: ", sentence)));
    lines.addAll(handsOn(scored.joints()));
    indicators(scored.joints()).ifPresent(text -> lines.addAll(wrapped("  ", text)));
    lines.add("  not visible from above:");
    scored.notVisible().forEach(text -> lines.addAll(wrapped("  - ", text)));
    written.ifPresent(files -> lines.addAll(paths(files)));
    return lines;
  }

  private static String headline(ScoredPhoto scored) {
    if (scored.row() instanceof RowOutcome.NotFound) {
      return "ROW NOT FOUND";
    }
    return switch (scored.verdict()) {
      case ACCEPTABLE -> "ACCEPTABLE as far as a photo shows";
      case PROCESS_INDICATOR -> "ACCEPTABLE as far as a photo shows, with process indicators";
      case UNJUDGED -> "NOT ALL JUDGED";
      case DEFECT -> "DEFECT";
    };
  }

  private static List<String> handsOn(List<GradedJoint> joints) {
    List<String> lines = new ArrayList<>();
    for (GradedJoint joint : joints) {
      if (joint.verdict() == Verdict.DEFECT) {
        lines.add(line("" + joint.pin(), joint));
      }
    }
    lines.addAll(unjudged(joints));
    if (!lines.isEmpty()) {
      lines.add(
          0, LINE.formatted("pin", "verdict", "finding", "reason, or what to do at the bench"));
    }
    return lines;
  }

  /** Neighbours that are unjudged for one reason share a line. */
  private static List<String> unjudged(List<GradedJoint> joints) {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < joints.size(); i++) {
      if (joints.get(i).verdict() == Verdict.UNJUDGED) {
        int from = i;
        String tail = line("", joints.get(from));
        while (i + 1 < joints.size()
            && joints.get(i + 1).verdict() == Verdict.UNJUDGED
            && line("", joints.get(i + 1)).equals(tail)) {
          i++;
        }
        String last = i > from ? "-" + joints.get(i).pin() : "";
        lines.add(line(joints.get(from).pin() + last, joints.get(from)));
      }
    }
    return lines;
  }

  private static String line(String pins, GradedJoint joint) {
    List<Finding> grave =
        joint.findings().stream().filter(f -> f.verdict() == joint.verdict()).toList();
    String what = grave.stream().map(Words::finding).collect(Collectors.joining("+"));
    String todo =
        grave.stream()
            .map(Finding::settleBy)
            .filter(text -> !text.isEmpty())
            .findFirst()
            .orElse(joint.unjudgedBecause().orElse(""));
    String verdict = Words.verdict(joint.verdict());
    return cut(LINE.formatted(pins, verdict, what.isEmpty() ? "-" : what, todo).stripTrailing());
  }

  private static String cut(String line) {
    return line.length() <= COLUMNS ? line : line.substring(0, COLUMNS - 3) + "...";
  }

  private static Optional<String> indicators(List<GradedJoint> joints) {
    String text =
        joints.stream()
            .filter(joint -> joint.verdict() == Verdict.PROCESS_INDICATOR)
            .map(
                joint ->
                    joint.pin()
                        + joint.findings().stream()
                            .map(f -> " " + Words.kind(f.kind()))
                            .collect(Collectors.joining(" and")))
            .collect(Collectors.joining("; "));
    return text.isEmpty() ? Optional.empty() : Optional.of("process indicators: " + text);
  }

  private static List<String> paths(WrittenReport files) {
    List<String> lines = new ArrayList<>();
    for (Path path : List.of(files.picture(), files.json(), files.csv())) {
      lines.add("  wrote " + path);
    }
    return lines;
  }

  /** Text behind a lead-in, wrapped at words, later lines indented by four. */
  private static List<String> wrapped(String leadIn, String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(leadIn);
    boolean empty = true;
    for (String word : text.split(" ")) {
      if (!empty && line.length() + 1 + word.length() > COLUMNS) {
        lines.add(line.toString());
        line = new StringBuilder("    ");
        empty = true;
      }
      line.append(empty ? "" : " ").append(word);
      empty = false;
    }
    lines.add(line.toString());
    return lines;
  }
}
