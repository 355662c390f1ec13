package leadlight.cli.score;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.model.result.Besides;
import leadlight.model.result.ScoredPhoto;
import leadlight.report.ReportWriter;
import leadlight.report.TerminalSummary;
import leadlight.report.WrittenReport;

/** What score says on the terminal: as much as was asked for, or JSON. */
final class ScoreTalk {

  private final Streams streams;
  private final TalkOptions options;
  private final boolean json;
  private final ReportWriter writer;
  private final List<String> documents = new ArrayList<>();

  ScoreTalk(Streams streams, TalkOptions options, boolean json, ReportWriter writer) {
    this.streams = streams;
    this.options = options;
    this.json = json;
    this.writer = writer;
  }

  /** Says what was made of a photo. */
  void of(ScoredPhoto scored, WrittenReport written) {
    of(scored, Besides.NONE, written);
  }

  /** The same of a result that other photos had to do with. */
  void of(ScoredPhoto scored, Besides besides, WrittenReport written) {
    if (json) {
      documents.add(new String(writer.json(scored, besides), StandardCharsets.UTF_8).strip());
      return;
    }
    List<String> lines = TerminalSummary.lines(scored, Optional.of(written), options.detail());
    options.coloured(lines, scored.verdict(), streams).forEach(streams.out()::println);
  }

  /** Prints one JSON document: that of the photo, or a list of those of several. */
  void end(boolean several) {
    if (json && !(documents.isEmpty() && !several)) {
      String all = String.join(",\n", documents);
      streams.out().println(several ? "[\n" + all + "\n]" : all);
    }
  }

  /** A line that even the shortest talk needs. */
  void always(String line) {
    if (!json) {
      streams.out().println(line);
    }
  }

  /** A line more, where words are wanted. */
  void line(String line) {
    if (!json && options.detail() != TerminalSummary.Detail.LEAST) {
      streams.out().println(line);
    }
  }

  /** Names a photo that cannot be used. */
  ExitStatus refused(UserError e) {
    streams.err().println("leadlight: " + e.getMessage());
    return ExitStatus.UNUSABLE;
  }
}
