package leadlight.drill;

import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import leadlight.drill.sitting.ResultWords;
import leadlight.drill.sitting.Telling;
import leadlight.drill.skill.DrillRules;
import leadlight.drill.skill.Figures;
import leadlight.drill.skill.History;
import leadlight.quality.Page;
import leadlight.quality.Page.Grid;
import leadlight.quality.Page.Heading;
import leadlight.quality.Page.Text;
import leadlight.quality.Plot;
import leadlight.record.DrillAnswer;
import leadlight.statistics.Rated;

/** The page of a person's history. */
public final class DrillPages {

  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

  private static final double MS_PER_S = 1000;

  private final History history;
  private final List<Page.Block> blocks = new ArrayList<>();

  private DrillPages(History history) {
    this.history = history;
  }

  /** The history: figures over time, findings, confusion, own work, what comes next. */
  public static Page history(History history) {
    DrillPages pages = new DrillPages(history);
    pages.opening();
    pages.overTime();
    pages.findings();
    pages.confusion();
    pages.ownWork();
    pages.blocks.add(new Text(ResultWords.CERTIFIES_NOTHING, true));
    return new Page("Drills of " + history.person(), pages.blocks);
  }

  private void opening() {
    List<List<String>> rows = new ArrayList<>();
    int all = history.drills().size();
    if (all > history.recentSittings()) {
      history.recent().ifPresent(f -> rows.add(line("last " + history.recentSittings(), f)));
    }
    history.figures().ifPresent(f -> rows.add(line("all " + all, f)));
    if (rows.isEmpty()) {
      text("No drill with truth has been answered yet.");
      return;
    }
    blocks.add(new Grid(HEADER, rows));
    text(
        "Rates with 95 % intervals by photo (Wilson at the effective number of joints, since joints"
            + " of one photo are alike); kappa (Cohen) against the truth, its interval by photo, too"
            + " (jackknife). A joint that was not judged is neither missed nor a false alarm. Half of a drill's"
            + " joints are faulty; on a board, where faults are rare, more of them are missed. A"
            + " practice set that was drawn for a person holds more of what they miss: its rate is above"
            + " that of a common set.");
    text("Half of the answers took no longer than %s s.".formatted(seconds(history.answers())));
  }

  private static String seconds(List<DrillAnswer> answers) {
    List<Long> took = answers.stream().map(DrillAnswer::tookMs).sorted().toList();
    return String.format(Locale.ROOT, "%.1f", took.get((took.size() - 1) / 2) / MS_PER_S);
  }

  private static final List<String> HEADER =
      List.of("sittings", "joints", "missed", "false alarms", "not judged", "kappa");

  private static List<String> line(String name, Figures f) {
    return List.of(
        name,
        "" + f.judged(),
        rate(f.missed()),
        rate(f.falseAlarm()),
        rate(f.notJudged()),
        f.kappa().value().isEmpty()
            ? "not defined"
            : ResultWords.value(f.kappa()) + " (" + ResultWords.range(f.kappa()) + ")");
  }

  static String rate(Rated rate) {
    return rate.of() == 0
        ? "none to rate"
        : String.format(
            Locale.ROOT,
            "%d of %d, %.0f %% (%.0f to %.0f)",
            rate.count(),
            rate.of(),
            100 * rate.share(),
            100 * rate.lower(),
            100 * rate.upper());
  }

  private void overTime() {
    List<List<String>> rows = new ArrayList<>();
    List<String> ticks = new ArrayList<>();
    Band missed = new Band("missed");
    Band alarms = new Band("false alarms");
    for (History.Sat sat : history.drills()) {
      Optional<Figures> figures = Figures.of(sat.answers());
      if (figures.isPresent()) {
        String when = day(sat.sitting().startedAt());
        rows.add(line(when + ", " + sat.sitting().set().name(), figures.get()));
        missed.add(ticks.size(), figures.get().missed());
        alarms.add(ticks.size(), figures.get().falseAlarm());
        ticks.add("" + (ticks.size() + 1));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Heading("Over time"));
    if (rows.size() > 1) {
      blocks.add(missed.chart(ticks));
      blocks.add(alarms.chart(ticks));
    }
    blocks.add(new Grid(HEADER, rows));
  }

  /** A rate over sittings. */
  private static final class Band {
    private final String name;
    private final List<double[]> rate = new ArrayList<>();
    private final List<double[]> lower = new ArrayList<>();
    private final List<double[]> upper = new ArrayList<>();

    Band(String name) {
      this.name = name;
    }

    void add(int at, Rated of) {
      if (of.of() > 0) {
        rate.add(new double[] {at, 100 * of.share()});
        lower.add(new double[] {at, 100 * of.lower()});
        upper.add(new double[] {at, 100 * of.upper()});
      }
    }

    Page.Chart chart(List<String> ticks) {
      return new Page.Chart(
          new Plot(
              "Share " + name,
              "sitting",
              "per cent",
              ticks,
              List.of(
                  new Plot.Series("95 % interval, upper", Plot.Style.DASHED, upper),
                  new Plot.Series("lower", Plot.Style.DASHED, lower),
                  new Plot.Series(name, Plot.Style.LINE, rate))));
    }
  }

  private void findings() {
    List<List<String>> rows = new ArrayList<>();
    for (History.ByFinding f : history.findings()) {
      rows.add(
          List.of(
              Telling.kind(f.finding()),
              rate(f.missed()),
              rate(f.notRight()),
              f.step() + " of " + DrillRules.builtIn().due().count(),
              share(f.step())));
    }
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Heading("By finding, the weakest first"));
    blocks.add(
        new Grid(
            List.of("defect", "called sound", "not right in verdict and name", "step", "due again"),
            rows));
    text(
        "When a finding is due again: a right answer moves it one step on, any other back to the"
            + " first (after Leitner 1972). \"leadlight drill new --for\" draws by these steps.");
  }

  private static String share(int step) {
    return step == 1 ? "most often" : "1/" + (1 << (step - 1)) + " as often";
  }

  private void confusion() {
    Optional<Figures> figures = history.figures();
    List<List<String>> rows = new ArrayList<>();
    if (figures.isPresent()) {
      for (Map.Entry<String, Map<String, Integer>> truth : figures.get().confusion().entrySet()) {
        List<String> calls = new ArrayList<>();
        truth.getValue().entrySet().stream()
            .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
            .forEach(call -> calls.add(call.getKey() + " " + call.getValue()));
        rows.add(List.of(truth.getKey(), String.join(", ", calls)));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading("What was called what"));
      blocks.add(new Grid(List.of("in truth", "called"), rows));
    }
  }

  private void ownWork() {
    if (history.own().isEmpty()) {
      return;
    }
    blocks.add(new Heading("Own work, beside Leadlight"));
    List<List<String>> rows = new ArrayList<>();
    history.besideTool().forEach((side, count) -> rows.add(List.of(side.title(), "" + count)));
    blocks.add(new Grid(List.of(history.own().size() + " rows", "joints"), rows));
    text("Leadlight is not the truth, so these count in no rate above.");
  }

  static String day(ZonedDateTime at) {
    return DAY.format(at);
  }

  private void text(String words) {
    blocks.add(new Text(words, false));
  }
}
