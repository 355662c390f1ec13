package leadlight.trial;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.RowResult;

/** The figures of a trial on real photos as a table for people. */
public final class NoteTable {

  private static final String LINE = "  %-16s %-24s %9s %6s  %7s  %-26s %-26s %s%n";

  private NoteTable() {}

  /** The table, then a line for each row with something to say; ends with a line break. */
  public static String of(NoteSummary summary, List<NoteOutcome> outcomes) {
    StringBuilder text = new StringBuilder();
    line(text, "%d real photos with annotated rows%n", summary.photos());
    line(
        text,
        LINE,
        "rows",
        "right",
        "not found",
        "wrong",
        "lateral",
        "factory called defect",
        "factory unjudged",
        "hand work called defect");
    for (Map.Entry<String, NoteSummary.Group> entry : summary.groups().entrySet()) {
      NoteSummary.Group group = entry.getValue();
      line(
          text,
          LINE,
          entry.getKey(),
          TrialTable.rate(group.rows().right()),
          group.rows().notFound().count(),
          group.rows().wrong().count(),
          TrialTable.percent(group.lateralMedian()),
          TrialTable.rate(group.factoryDefects()),
          TrialTable.rate(group.factoryUnjudged()),
          TrialTable.rate(group.otherDefects()));
    }
    GradedRows graded = GradedRows.of(outcomes);
    if (graded.any()) {
      graded(text, graded);
    }
    for (NoteOutcome outcome : outcomes) {
      if (outcome.row() != RowResult.RIGHT || !outcome.overlaps()) {
        line(text, "  %s %s%n", outcome.note().photo(), why(outcome));
      }
    }
    return text.toString();
  }

  private static void graded(StringBuilder text, GradedRows graded) {
    line(text, "joints that a careful eye graded, in found rows%n");
    line(text, "  bad: good said of bad  %s%n", TrialTable.rate(graded.badSaidGood()));
    line(text, "       called            %s%n", TrialTable.rate(graded.badCalled()));
    line(text, "       unjudged          %s%n", TrialTable.rate(graded.badUnjudged()));
    line(text, "  good: called           %s%n", TrialTable.rate(graded.goodCalled()));
    line(text, "        acceptable       %s%n", TrialTable.rate(graded.goodSaidGood()));
    line(text, "        unjudged         %s%n", TrialTable.rate(graded.goodUnjudged()));
    line(text, "  in rows not found      %s%n", TrialTable.rate(graded.notFound()));
    line(
        text,
        "  AUC                     %s of all pairs of bad and good, %s of those of one row in prodding order%n",
        TrialTable.percent(graded.auc()),
        TrialTable.percent(graded.aucWithinRows()));
  }

  private static String why(NoteOutcome outcome) {
    return switch (outcome.row()) {
      case NOT_FOUND -> "not found: " + outcome.reason();
      case WRONG ->
          String.format(
              Locale.ROOT, "wrong: %.2f pitch off in the median", outcome.medianOfPitch());
      case RIGHT -> "right across the leads, but beside them lengthwise";
    };
  }

  private static void line(StringBuilder text, String format, Object... arguments) {
    text.append(String.format(Locale.ROOT, format, arguments).replace("\r\n", "\n"));
  }
}
