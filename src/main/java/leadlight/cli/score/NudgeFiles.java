package leadlight.cli.score;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import leadlight.app.output.Reports;
import leadlight.app.score.NudgeRun;
import leadlight.app.score.ResultPlace;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.data.WholeFile;
import leadlight.grade.limits.AcceptanceSet;
import leadlight.page.words.PageContext;
import leadlight.report.NudgeReport;
import leadlight.report.ReportWriter;
import leadlight.report.TerminalSummary;
import leadlight.report.WrittenReport;
import leadlight.report.picture.NudgePicture;
import leadlight.report.words.PictureWords;
import leadlight.together.NudgeJoin;

/** Writes and prints what a nudge showed. */
final class NudgeFiles {

  private final ReportWriter writer;
  private final ResultPlace place;
  private final boolean json;
  private final Streams streams;

  NudgeFiles(
      AcceptanceSet limits, PageContext pages, ResultPlace place, boolean json, Streams streams) {
    this.writer = Reports.writer(limits, pages);
    this.place = place;
    this.json = json;
    this.streams = streams;
  }

  /** Writes results and picture, and says what was seen. */
  ExitStatus write(NudgeRun.Result nudge) {
    Path out = place.of(nudge.scored().photo());
    WrittenReport written = writer.write(nudge.scored(), nudge.rest().frame(), out);
    byte[] report = NudgeReport.json(nudge.scored(), nudge.nudge(), writer.context());
    Path jsonFile = beside(written.json(), ".nudge.json");
    Path picture = beside(written.json(), ".nudge.png");
    WholeFile.write(jsonFile, report);
    WholeFile.write(
        picture,
        NudgePicture.png(
            nudge.scored(),
            nudge.row(),
            nudge.nudge(),
            nudge.rest().frame(),
            new PictureWords(writer.context().words())));
    if (json) {
      streams.out().print(new String(report, StandardCharsets.UTF_8));
    } else {
      streams.out().println(nudge.scored().photo().file() + ", leads pushed:");
      NudgeReport.lines(nudge.nudge()).forEach(streams.out()::println);
      streams.out().println("  wrote " + jsonFile);
      streams.out().println("  wrote " + picture);
      TerminalSummary.lines(nudge.scored(), Optional.of(written), TerminalSummary.Detail.USUAL)
          .forEach(streams.out()::println);
      if (!out.equals(place.out())) {
        streams
            .out()
            .println("  its results in " + place.out() + " are in the record and stay as they are");
      }
    }
    return ExitStatus.of(NudgeJoin.verdict(nudge.scored(), nudge.nudge()));
  }

  private static Path beside(Path json, String ending) {
    String name = json.getFileName().toString();
    return json.resolveSibling(name.substring(0, name.length() - ".json".length()) + ending);
  }
}
