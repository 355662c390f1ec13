package leadlight.cli.score;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leadlight.app.output.FaultLog;
import leadlight.app.record.RecordLines;
import leadlight.app.score.Told;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.Streams;
import leadlight.model.result.Besides;
import leadlight.model.result.LegSet;
import leadlight.report.ReportWriter;
import leadlight.report.TerminalSummary;
import leadlight.report.words.ConnectorLines;
import leadlight.text.Sentences;

/** What score says on the terminal: as much as was asked for, or JSON. */
final class ScoreTalk {

  private final Streams streams;
  private final TalkOptions options;
  private final boolean json;
  private final ReportWriter writer;
  private final List<String> documents = new ArrayList<>();
  private ExitStatus worst = ExitStatus.GOOD;
  private String news = "";

  ScoreTalk(Streams streams, TalkOptions options, boolean json, ReportWriter writer) {
    this.streams = streams;
    this.options = options;
    this.json = json;
    this.writer = writer;
  }

  /** What is said behind each photo that is recorded. */
  void news(String behindJob) {
    news = behindJob;
  }

  /** Says what became of a photo. */
  void hear(Told told) {
    if (told instanceof Told.Reported report) {
      of(report);
    } else if (told instanceof Told.Recorded entered) {
      of(entered.report());
      line(
          "  recorded as scoring %d: %s, %s, %s%s"
              .formatted(
                  entered.scoring(),
                  RecordLines.printable(entered.subject().job()),
                  RecordLines.board(entered.subject().board()),
                  entered.subject().words(),
                  RecordLines.printable(news)));
    } else if (told instanceof Told.Beside beside) {
      of(beside.report());
      line("  its results in " + beside.proven() + " are in the record and stay as they are");
    } else if (told instanceof Told.Refused refused) {
      streams.err().println("leadlight: " + refused.why().getMessage());
      worst = worst.worse(ExitStatus.UNUSABLE);
    } else if (told instanceof Told.Failed failed) {
      streams.err().println("leadlight: " + failed.photo() + ": " + FaultLog.write(failed.fault()));
      worst = worst.worse(ExitStatus.FAULT);
    }
  }

  /** What all that was heard comes to. */
  ExitStatus worst() {
    return worst;
  }

  private void of(Told.Reported report) {
    worst = worst.worse(ExitStatus.of(report.scored().verdict()));
    if (json) {
      documents.add(
          new String(writer.json(report.scored(), report.besides()), StandardCharsets.UTF_8)
              .strip());
      return;
    }
    List<String> lines =
        TerminalSummary.lines(report.scored(), Optional.of(report.files()), options.detail());
    options.coloured(lines, report.scored().verdict(), streams).forEach(streams.out()::println);
    report.besides().photos().forEach(this::other);
    report.besides().legs().ifPresent(this::legs);
  }

  private void other(Besides.Other other) {
    String what =
        switch (other.role()) {
          case PLACED -> "compared with ";
          case SAME_ROW -> "joined with ";
          case BURST -> "stacked with ";
        };
    line(
        other
            .refused()
            .map(why -> "  not " + what + other.file() + ": " + Sentences.english().of(why))
            .orElse("  " + what + other.file()));
  }

  /** The first line of a connector even the shortest talk needs. */
  private void legs(LegSet legs) {
    List<String> lines = ConnectorLines.of(legs);
    streams.out().println(lines.get(0));
    lines.subList(1, lines.size()).forEach(this::line);
  }

  /** Prints one JSON document: that of the photo, or a list of those of several. */
  void end(boolean several) {
    if (json && !(documents.isEmpty() && !several)) {
      String all = String.join(",\n", documents);
      streams.out().println(several ? "[\n" + all + "\n]" : all);
    }
  }

  /** A line more, where words are wanted. */
  private void line(String line) {
    if (!json && options.detail() != TerminalSummary.Detail.LEAST) {
      streams.out().println(line);
    }
  }
}
