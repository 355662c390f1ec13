package leadlight.cli;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import leadlight.model.UserError;
import leadlight.quality.ChartData;
import leadlight.quality.ChartKind;
import leadlight.quality.ChartPages;
import leadlight.quality.ControlChart;
import leadlight.quality.Pareto;
import leadlight.quality.Table;
import leadlight.record.JobRecord;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code leadlight chart}: control charts of what was found. */
@Command(
    name = "chart",
    description = {
      "Control charts with run rules and a Pareto of findings.",
      "From the record, or from a CSV file: either counts (columns group, units, count) or "
          + "joints (verdict, the column to group by, finding if there, board for u charts)."
    },
    mixinStandardHelpOptions = true)
final class ChartCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "DATA.csv", arity = "0..1", description = "Instead of the record.")
  private Optional<Path> data = Optional.empty();

  @Mixin private RecordOption record;

  @Option(
      names = "--kind",
      paramLabel = "p|u|c|dpmo",
      defaultValue = "p",
      description =
          "p: share of joints; u: defects a board; c: defects in groups of one size; "
              + "dpmo: per million terminations (default: ${DEFAULT-VALUE}).")
  private String kind;

  @Option(
      names = "--by",
      paramLabel = "COLUMN",
      defaultValue = "day",
      description = "day, connector, operator, pin, or any column (default: ${DEFAULT-VALUE}).")
  private String by;

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      defaultValue = "last",
      description =
          "Of the record: last (each board's), all, as-received, after-rework or final (default:"
              + " ${DEFAULT-VALUE}).")
  private String stage;

  @Mixin private VerdictWords words;

  @Option(
      names = "--unordered",
      description = "The groups do not follow in time; so it is for connector, operator and pin.")
  private boolean unordered;

  @Option(names = "--out", paramLabel = "DIR", defaultValue = "reports/chart")
  private Path out;

  ChartCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    ChartKind chosen = kind();
    ChartData read =
        data.map(file -> ChartData.read(Table.read(file), chosen, by, words.reading(false)))
            .orElseGet(() -> ChartData.of(joints(), chosen));
    boolean ordered = !unordered && !Set.of("connector", "operator", "pin").contains(by);
    ControlChart chart = ControlChart.of(chosen, read.groups(), ordered);
    PageFiles.write(
        ChartPages.page(chart, Pareto.of(read.findings()), by, ordered),
        out,
        "chart-" + chosen.word().toLowerCase(Locale.ROOT) + "-" + by.replaceAll("\\W+", "-"),
        streams);
    return ExitStatus.GOOD.code();
  }

  private List<ChartData.Graded> joints() {
    try (JobRecord open = record.existing()) {
      long lost = RecordJoints.withoutRow(open, stage);
      if (lost > 0) {
        streams
            .err()
            .println(
                "leadlight: not counted, because no row was found: photos in the record " + lost);
      }
      return RecordJoints.read(open, by, stage, words.reading(false));
    }
  }

  private ChartKind kind() {
    return Arrays.stream(ChartKind.values())
        .filter(k -> k.word().equalsIgnoreCase(kind))
        .findFirst()
        .orElseThrow(() -> new UserError("--kind " + kind + " is unknown; p, u, c or dpmo"));
  }
}
