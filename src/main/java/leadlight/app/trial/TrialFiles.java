package leadlight.app.trial;

import java.io.StringWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import leadlight.app.output.Version;
import leadlight.data.WholeFile;
import leadlight.trial.NoteSummary;
import leadlight.trial.NoteTable;
import leadlight.trial.TrialSummary;
import leadlight.trial.TrialTable;
import leadlight.trial.list.JointsCsv;
import leadlight.trial.list.SlipList;
import leadlight.trial.list.TrialReport;

/**
 * What a trial leaves: trial.json, sheets of close-ups, tables of joints, and the table to read.
 */
public final class TrialFiles {

  /** More of one kind are only counted in the table; trial.json has all. */
  private static final int MOST_SLIPS = 12;

  private final TrialRun run;
  private final String report;

  /**
   * Takes a trial that was run.
   *
   * @param truePositions whether the true row was given to the joints
   * @param bench the enrolled bench that judged, if one did
   */
  public TrialFiles(TrialRun run, boolean truePositions, Optional<String> bench) {
    this.run = run;
    this.report =
        TrialReport.of(Version.number(), truePositions, bench, run.outcomes(), run.notes())
                .toPrettyString()
            + "\n";
  }

  /**
   * Writes all.
   *
   * @param out folder of trial.json and the sheets
   * @param measures table of all numbers of each joint of a found row, if asked for
   * @param joints table of every joint with truth, if asked for
   */
  public void write(Path out, Optional<Path> measures, Optional<Path> joints) {
    measures.ifPresent(file -> table(file, run.measures()::write));
    joints.ifPresent(file -> table(file, csv -> JointsCsv.write(run.outcomes(), csv)));
    WholeFile.write(out.resolve("trial.json"), report.getBytes(StandardCharsets.UTF_8));
    run.sheets().write(out);
  }

  private static void table(Path file, Consumer<Writer> table) {
    StringWriter csv = new StringWriter();
    table.accept(csv);
    WholeFile.write(file, csv.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** The text of trial.json. */
  public String report() {
    return report;
  }

  /** How right it was, for the terminal. */
  public String table() {
    String truth =
        run.outcomes().isEmpty()
            ? ""
            : TrialTable.of(TrialSummary.of(run.outcomes()))
                + "\n"
                + SlipList.of(run.outcomes(), MOST_SLIPS);
    String notes =
        run.notes().isEmpty() ? "" : NoteTable.of(NoteSummary.of(run.notes()), run.notes());
    return truth + notes;
  }
}
