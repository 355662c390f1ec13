package leadlight.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.joint.GradedJoint;
import leadlight.model.result.ScoredPhoto;
import leadlight.model.row.RowOutcome;
import leadlight.report.words.Columns;
import leadlight.report.words.HandsOn;
import leadlight.report.words.Words;
import leadlight.text.Sentences;

/** A scored photo in a few plain lines of at most 80 characters, worst first. */
public final class TerminalSummary {

  private static final Sentences SENTENCES = Sentences.english();

  /** How much is said. */
  public enum Detail {
    /** The verdict alone, on one line. */
    LEAST,
    /** The verdict, what needs hands, where the page lies. */
    USUAL,
    /** Also what was seen of each joint, what cannot be seen, and all files. */
    MOST
  }

  private TerminalSummary() {}

  /**
   * The lines, without line ends and without colour. Only file names and paths may be longer than
   * 80 characters.
   *
   * @param written the files, if any were written
   * @param detail how much is said
   */
  public static List<String> lines(
      ScoredPhoto scored, Optional<WrittenReport> written, Detail detail) {
    List<String> lines = new ArrayList<>();
    String first = scored.photo().file() + ": " + headline(scored);
    if (detail == Detail.LEAST) {
      lines.add(scored.joints().isEmpty() ? first : first + "; " + Words.counts(scored.joints()));
      return lines;
    }
    lines.add(first);
    if (!scored.joints().isEmpty()) {
      lines.add("  " + Words.counts(scored.joints()));
    }
    if (scored.row() instanceof RowOutcome.NotFound none) {
      lines.addAll(wrapped("  ", SENTENCES.of(none.reason())));
    }
    SENTENCES.of(scored.rowNotes()).forEach(note -> lines.addAll(wrapped("  row: ", note)));
    lines.addAll(HandsOn.lines(scored.joints()));
    indicators(scored.joints()).ifPresent(text -> lines.addAll(wrapped("  ", text)));
    SENTENCES.of(scored.fitness()).forEach(note -> lines.addAll(wrapped("  photo: ", note)));
    if (detail == Detail.USUAL) {
      written.ifPresent(files -> lines.add("  page: " + files.page()));
      return lines;
    }
    HandsOn.grounds(scored.joints()).forEach(text -> lines.addAll(wrapped("  ", text)));
    lines.addAll(
        wrapped("  ", Words.job(scored.settings().row(), scored.settings().productClass())));
    lines.add("  not visible from above:");
    SENTENCES.of(scored.notVisible()).forEach(text -> lines.addAll(wrapped("  - ", text)));
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
    for (Path path : List.of(files.page(), files.picture(), files.json(), files.csv())) {
      lines.add("  wrote " + path);
    }
    return lines;
  }

  private static List<String> wrapped(String leadIn, String text) {
    return Columns.wrapped(leadIn, text, "    ");
  }
}
