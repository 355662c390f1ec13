package leadlight.cli.score;

import java.util.ArrayList;
import java.util.List;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.model.Verdict;
import leadlight.report.TerminalSummary.Detail;
import picocli.CommandLine.Option;

/** How much is said on the terminal. */
final class TalkOptions {

  @Option(
      names = {"-q", "--quiet"},
      description = "Say the verdict alone, one line a photo.")
  private boolean quiet;

  @Option(
      names = {"-v", "--verbose"},
      description = "Say all: what was seen at each joint, what cannot be seen, the files.")
  private boolean verbose;

  Detail detail() {
    if (quiet && verbose) {
      throw new UserError("give --quiet or --verbose, not both");
    }
    return quiet ? Detail.LEAST : verbose ? Detail.MOST : Detail.USUAL;
  }

  /** The first line in bold and the verdict's colour, on a terminal alone (ISO/IEC 6429). */
  List<String> coloured(List<String> lines, Verdict verdict, Streams streams) {
    if (!streams.interactive() || lines.isEmpty() || System.getenv("NO_COLOR") != null) {
      return lines;
    }
    String code =
        switch (verdict) {
          case DEFECT -> "31";
          case UNJUDGED -> "36";
          case PROCESS_INDICATOR -> "33";
          case ACCEPTABLE -> "32";
        };
    List<String> coloured = new ArrayList<>(lines);
    coloured.set(0, "\u001b[1;" + code + "m" + lines.get(0) + "\u001b[0m");
    return coloured;
  }
}
