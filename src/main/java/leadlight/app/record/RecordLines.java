package leadlight.app.record;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.Verdict;
import leadlight.model.joint.Finding;
import leadlight.model.joint.GradedJoint;
import leadlight.record.said.BenchResult;
import leadlight.record.said.Overrule;
import leadlight.record.said.RecordedJoint;
import leadlight.record.said.RecordedRow;
import leadlight.record.said.Standing;
import leadlight.record.said.TakenBack;
import leadlight.record.scoring.Scoring;
import leadlight.record.scoring.Subject;
import leadlight.text.Sentences;

/** Entries of the record as lines of a terminal. */
public final class RecordLines {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm xxx", Locale.ROOT);

  private static final Sentences SENTENCES = Sentences.english();

  private RecordLines() {}

  /** A board's name on a terminal: "board 1" of one that is a mere number. */
  public static String board(String name) {
    return printable(Subject.boardWords(name));
  }

  /** "12 2026-11-25 17:05 +00:00 job, board, as received usb-c-16 defect photo.jpg". */
  public static String line(Scoring scoring, Verdict verdict) {
    return "%4d  %s  %s, %s, %s  %s  %s  %s"
        .formatted(
            scoring.id(),
            TIME.format(scoring.scoredAt()),
            printable(scoring.subject().job()),
            board(scoring.subject().board()),
            scoring.subject().words(),
            scoring.method().settings().row().connectorId(),
            verdict.id(),
            printable(scoring.photo().file()));
  }

  public static List<String> all(Scoring scoring, RecordedRow row) {
    List<String> lines = new ArrayList<>();
    lines.add(line(scoring, row.joints().isEmpty() ? scoring.verdict() : row.verdict()));
    lines.add("  photo    " + printable(scoring.photoPath().toString()));
    lines.add("  sha256   " + scoring.photo().sha256());
    scoring.photo().takenAt().ifPresent(at -> lines.add("  taken    " + at));
    lines.add("  results  " + printable(scoring.results().toString()));
    lines.add("  by       " + scoring.person() + ", Leadlight " + scoring.method().toolVersion());
    scoring.method().reader().ifPresent(reader -> lines.add("  reader   " + reader));
    scoring.method().bench().ifPresent(bench -> lines.add("  bench    " + printable(bench)));
    lines.add(
        "  class    "
            + scoring.method().settings().productClass()
            + ", limits "
            + scoring.method().settings().acceptanceSet());
    scoring.rowReason().ifPresent(reason -> lines.add("  no row: " + SENTENCES.of(reason)));
    SENTENCES.of(scoring.rowNotes()).forEach(note -> lines.add("  row: " + note));
    row.joints().forEach(joint -> add(lines, joint, row.joints().size()));
    return lines;
  }

  private static void add(List<String> lines, RecordedJoint joint, int leads) {
    Standing standing = joint.standing();
    lines.add(
        "  pin %2d  %s%s"
            .formatted(joint.pin(), said(standing.joint()), by(joint, standing.source())));
    SENTENCES.of(standing.joint().doubts()).forEach(why -> lines.add("          " + why));
    if (joint.tool().verdict() != Verdict.ACCEPTABLE) {
      RecordOpinions.line(joint.tool().joint(), leads)
          .ifPresent(line -> lines.add("          " + line));
    }
    joint.bench().forEach(result -> lines.add("          " + bench(result)));
    joint.overrules().forEach(opinion -> lines.add("          " + printable(overrule(opinion))));
    joint.takenBack().forEach(back -> lines.add("          " + printable(takenBack(back))));
  }

  private static String said(GradedJoint joint) {
    return joint.verdict().id()
        + joint.findings().stream()
            .map(Finding::kind)
            .map(kind -> " " + kind.id())
            .distinct()
            .collect(Collectors.joining());
  }

  private static String by(RecordedJoint joint, Standing.Source source) {
    return source == Standing.Source.TOOL
        ? ""
        : "  (by the %s; the tool said %s)".formatted(source.id(), said(joint.tool()));
  }

  private static String bench(BenchResult result) {
    return "%s (%s, %s)"
        .formatted(result(result), printable(result.person()), TIME.format(result.at()));
  }

  /** "meter to pin 6: ok". */
  public static String result(BenchResult result) {
    String to = result.otherPin().isPresent() ? " to pin " + result.otherPin().getAsInt() : "";
    return "%s%s: %s".formatted(result.test().id(), to, result.result());
  }

  /** "taken back by Ada: prod: moves (wrong lead)". */
  static String takenBack(TakenBack back) {
    String what =
        back.opinion()
            .map(RecordLines::overrule)
            .or(() -> back.bench().map(RecordLines::bench))
            .orElseThrow();
    return "taken back by "
        + back.person()
        + ": "
        + what
        + (back.reason().isEmpty() ? "" : ", because " + back.reason());
  }

  private static String overrule(Overrule opinion) {
    return "%s says %s%s: %s (%s)"
        .formatted(
            opinion.person(),
            opinion.verdict().id(),
            opinion.finding().map(kind -> " " + kind.id()).orElse(""),
            opinion.reason(),
            TIME.format(opinion.at()));
  }

  /** Names from outside must not move the terminal's cursor or turn its text round. */
  public static String printable(String text) {
    return text.replaceAll("[\\p{Cc}\\p{Cf}\\p{Zl}\\p{Zp}]", "?");
  }
}
