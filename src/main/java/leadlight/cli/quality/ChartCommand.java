package leadlight.cli.quality;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import leadlight.app.quality.RecordDays;
import leadlight.app.quality.RecordJoints;
import leadlight.cli.option.RecordOption;
import leadlight.cli.terminal.ExitStatus;
import leadlight.cli.terminal.PageShow;
import leadlight.cli.terminal.Streams;
import leadlight.model.UserError;
import leadlight.quality.Days;
import leadlight.quality.LeftOut;
import leadlight.quality.Page;
import leadlight.quality.Stages;
import leadlight.quality.Table;
import leadlight.quality.chart.ChartData;
import leadlight.quality.chart.ChartKind;
import leadlight.quality.chart.ChartPages;
import leadlight.quality.chart.ControlChart;
import leadlight.quality.chart.OtherChartPages;
import leadlight.quality.chart.Pareto;
import leadlight.quality.chart.RareEvents;
import leadlight.quality.grades.Reading;
import leadlight.record.JobRecord;
import leadlight.record.scoring.Stage;
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
public final class ChartCommand implements Callable<Integer> {

  private final Streams streams;

  @Parameters(paramLabel = "DATA.csv", arity = "0..1", description = "Instead of the record.")
  private Optional<Path> data = Optional.empty();

  @Mixin private RecordOption record;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      defaultValue = "p",
      description =
          "p: share of joints; u: defects a board; c: defects in groups of one size; "
              + "dpmo: per million terminations; g: sound joints between rare defects; t: days "
              + "between them (default: ${DEFAULT-VALUE}).")
  private String kind;

  @Option(
      names = "--per",
      paramLabel = "COLUMN",
      defaultValue = "day",
      description =
          "day, connector, operator, pin, stage, finding, or any column, as lamp (default:"
              + " ${DEFAULT-VALUE}).")
  private String by;

  @Mixin private VerdictWords words;

  @Option(
      names = "--unordered",
      description =
          "The groups do not follow in time; so it is for connector, operator, lamp, pin, finding"
              + " and stage.")
  private boolean unordered;

  @Option(
      names = "--rules",
      paramLabel = "1,2,3,4",
      hideParamSyntax = true,
      split = ",",
      description =
          "Run rules to ask: 1 beyond three sigma, 2 two of three beyond two, 3 four of five beyond"
              + " one, 4 eight on one side; fewer give fewer false alarms (default: all).")
  private Set<Integer> rules = Set.of();

  @Option(
      names = "--baseline",
      paramLabel = "N",
      description = "The first N groups alone set centre and limits.")
  private int baseline;

  @Option(
      names = "--laney",
      description = "p' and u': limits widened where groups differ more than chance.")
  private boolean laney;

  @Option(names = "--cusum", description = "A cumulative sum chart too, for small lasting shifts.")
  private boolean cusum;

  @Option(names = "--ewma", description = "A moving average chart too, for the same.")
  private boolean ewma;

  @Option(
      names = "--stage",
      paramLabel = "STAGE",
      description = "Only this stage; by default each board's last.")
  private Optional<String> stage = Optional.empty();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      defaultValue = "reports/chart",
      description = "Folder for pages and tables (default: ${DEFAULT-VALUE}).")
  private Path out;

  public ChartCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    boolean rare = Set.of("g", "t").contains(kind.toLowerCase(Locale.ROOT));
    ChartKind chosen = rare ? ChartKind.P : kind();
    Optional<Table> table = data.map(file -> Table.read(file));
    ChartData read = table.map(it -> ofTable(it, chosen)).orElseGet(() -> ofRecord(chosen, rare));
    if (rare) {
      rare(read);
    } else {
      // Counts come with groups of their own, whatever these are.
      boolean named = table.isPresent() && table.get().has("group");
      shewhart(chosen, read, named ? "group" : by);
    }
    return ExitStatus.GOOD.code();
  }

  private void rare(ChartData read) {
    boolean g = kind.equalsIgnoreCase("g");
    if (read.looked().isEmpty()
        || read.looked().stream().anyMatch(joint -> Days.of(joint.day()).isEmpty())) {
      throw new UserError(
          "a g or t chart needs single joints with their day; give columns day and verdict");
    }
    RareEvents chart = g ? RareEvents.g(read.looked()) : RareEvents.t(read.looked());
    String what = g ? "sound joints between defects" : "days between defects";
    Page page = OtherChartPages.rare(chart, g ? "g" : "t", what);
    PageShow.write(page, out, "chart-" + (g ? "g" : "t"), streams);
  }

  private void shewhart(ChartKind chosen, ChartData read, String word) {
    boolean ordered =
        !unordered
            && !Set.of("connector", "operator", "lamp", "pin", "finding", "stage").contains(by);
    ControlChart chart = ControlChart.of(chosen, read.groups(), design(ordered));
    String name = chosen.word().toLowerCase(Locale.ROOT) + "-" + by.replaceAll("\\W+", "-");
    PageShow.write(
        ChartPages.page(chart, Pareto.of(read.findings()), word, ordered, read.left()),
        out,
        "chart-" + name,
        streams);
    if (cusum) {
      PageShow.write(OtherChartPages.cusum(chart, word), out, "cusum-" + name, streams);
    }
    if (ewma) {
      PageShow.write(OtherChartPages.ewma(chart, word), out, "ewma-" + name, streams);
    }
  }

  private ControlChart.Design design(boolean ordered) {
    if (!Set.of(1, 2, 3, 4).containsAll(rules) || baseline < 0) {
      throw new UserError("--rules takes numbers from 1 to 4, --baseline a count of groups");
    }
    if (!ordered && (laney || cusum || ewma || baseline > 0)) {
      throw new UserError(
          "--laney, --cusum, --ewma and --baseline need groups that follow in time; chart by day");
    }
    ControlChart.Design plain = ControlChart.Design.plain(ordered);
    boolean all = rules.isEmpty() || !ordered;
    return new ControlChart.Design(ordered, all ? plain.rules() : rules, baseline, laney);
  }

  private ChartData ofTable(Table table, ChartKind chosen) {
    Optional<Stage> only = stage();
    if (only.isEmpty()) {
      return ChartData.read(table, chosen, by, words.reading(false));
    }
    if (!table.has("stage")) {
      throw new UserError(table.name() + " has no column \"stage\"; leave --stage out");
    }
    String id = only.get().id();
    Table kept = table.where(row -> Stages.same(row.text("stage"), id));
    if (kept.rows().isEmpty()) {
      throw new UserError(table.name() + " has no line of stage " + id);
    }
    ChartData read = ChartData.read(kept, chosen, by, words.reading(false));
    List<String> left = new ArrayList<>(read.left());
    int others = table.rows().size() - kept.rows().size();
    if (others > 0) {
      left.add(
          0, LeftOut.ofStages(others, "joint", "other", "only " + only.get().words() + " counts"));
    }
    return new ChartData(read.groups(), read.findings(), read.looked(), left);
  }

  private ChartData ofRecord(ChartKind chosen, boolean rare) {
    Optional<Stage> only = stage();
    try (JobRecord open = record.existing()) {
      long lost = RecordJoints.withoutRow(open);
      if (lost > 0) {
        streams
            .err()
            .println(
                "leadlight: not counted, because no row was found: photos in the record " + lost);
      }
      Reading reading = words.reading(false);
      return rare
          ? ChartData.inOrder(new RecordDays(open, only, reading).looked())
          : RecordJoints.read(open, by, only, chosen, reading);
    }
  }

  private Optional<Stage> stage() {
    return stage.map(
        name ->
            Stage.of(name)
                .orElseThrow(
                    () ->
                        new UserError(
                            "--stage " + name + " is none; as-received, after-rework or final")));
  }

  private ChartKind kind() {
    return Arrays.stream(ChartKind.values())
        .filter(k -> k.word().equalsIgnoreCase(kind))
        .findFirst()
        .orElseThrow(() -> new UserError("--kind " + kind + " is unknown; p, u, c, dpmo, g or t"));
  }
}
