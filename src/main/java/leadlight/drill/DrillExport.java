package leadlight.drill;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import leadlight.data.Cells;
import leadlight.drill.skill.History;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.record.DrillAnswer;

/** Every answer as a table; the first five columns are those of {@code leadlight agree}. */
public final class DrillExport {

  private static final String[] HEADER = {
    "item",
    "grader",
    "trial",
    "verdict",
    "finding",
    "truth",
    "truth_findings",
    "tool",
    "tool_findings",
    "took_ms",
    "given_at",
    "set",
    "own_work"
  };

  private DrillExport() {}

  public static void write(List<History> people, OutputStream out) throws IOException {
    OutputStreamWriter text = new OutputStreamWriter(out, StandardCharsets.UTF_8);
    try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
      csv.writeRecord(HEADER);
      for (History person : people) {
        Trials trials = new Trials();
        for (History.Sat sat :
            Stream.concat(person.drills().stream(), person.own().stream()).toList()) {
          for (DrillAnswer answer : sat.answers()) {
            csv.writeRecord(line(person.person(), sat, answer, trials.next(answer.item())));
          }
        }
      }
    }
  }

  /** How often each joint was judged so far. */
  private static final class Trials {
    private final Map<String, Integer> counts = new HashMap<>();

    String next(String item) {
      return "" + counts.merge(item, 1, Integer::sum);
    }
  }

  private static String[] line(String person, History.Sat sat, DrillAnswer a, String trial) {
    return new String[] {
      Cells.harmless(a.item()),
      Cells.harmless(person),
      trial,
      a.said().id(),
      a.finding().map(FindingKind::id).orElse(""),
      a.truth().orElse(""),
      ids(a.truthFindings()),
      a.tool().map(Verdict::id).orElse(""),
      ids(a.toolFindings()),
      "" + a.tookMs(),
      a.at().toOffsetDateTime().toString(),
      Cells.harmless(sat.sitting().set().name()),
      "" + sat.sitting().set().ownWork()
    };
  }

  private static String ids(List<FindingKind> kinds) {
    return kinds.stream().map(FindingKind::id).collect(Collectors.joining("; "));
  }
}
