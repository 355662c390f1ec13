package leadlight.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
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
import leadlight.text.Messages;

/** The page of a person's history. */
public final class DrillPages {

  private static final double MS_PER_S = 1000;

  private final History history;
  private final Messages words;
  private final DrillWords said;
  private final List<Page.Block> blocks = new ArrayList<>();

  private DrillPages(History history, Messages words) {
    this.history = history;
    this.words = words;
    this.said = new DrillWords(words);
  }

  /** The history: figures over time, findings, confusion, own work, what comes next. */
  public static Page history(History history, Messages words) {
    DrillPages pages = new DrillPages(history, words);
    pages.opening();
    pages.overTime();
    pages.findings();
    pages.confusion();
    pages.ownWork();
    pages.blocks.add(new Text(words.get("drill.certifies-nothing"), true));
    return new Page(pages.get("title", history.person()), pages.blocks);
  }

  private void opening() {
    List<List<String>> rows = new ArrayList<>();
    int all = history.drills().size();
    if (all > history.recentSittings()) {
      history.recent().ifPresent(f -> rows.add(line(get("last", history.recentSittings()), f)));
    }
    history.figures().ifPresent(f -> rows.add(line(get("all", all), f)));
    if (rows.isEmpty()) {
      text(get("none"));
      return;
    }
    blocks.add(new Grid(header(), rows));
    text(get("rates"));
    text(get("half", seconds(history.answers())));
  }

  private String seconds(List<DrillAnswer> answers) {
    List<Long> took = answers.stream().map(DrillAnswer::tookMs).sorted().toList();
    return words.number(took.get((took.size() - 1) / 2) / MS_PER_S, 1);
  }

  private List<String> header() {
    return Stream.of("sittings", "joints", "missed", "false-alarms", "not-judged", "kappa")
        .map(this::get)
        .toList();
  }

  private String get(String key, Object... values) {
    return words.get("drill.history." + key, values);
  }

  private List<String> line(String name, Figures f) {
    return List.of(
        name,
        "" + f.judged(),
        said.rate(f.missed()),
        said.rate(f.falseAlarm()),
        said.rate(f.notJudged()),
        f.kappa().value().isEmpty() ? words.get("drill.not-defined") : said.kappa(f.kappa()));
  }

  private void overTime() {
    List<List<String>> rows = new ArrayList<>();
    List<String> ticks = new ArrayList<>();
    Band missed = new Band(words, "missed");
    Band alarms = new Band(words, "false-alarms");
    for (History.Sat sat : history.drills()) {
      Optional<Figures> figures = Figures.of(sat.answers());
      if (figures.isPresent()) {
        String when = said.day(sat.sitting().startedAt());
        rows.add(line(when + ", " + sat.sitting().set().name(), figures.get()));
        missed.add(ticks.size(), figures.get().missed());
        alarms.add(ticks.size(), figures.get().falseAlarm());
        ticks.add("" + (ticks.size() + 1));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Heading(get("over-time")));
    if (rows.size() > 1) {
      blocks.add(missed.chart(ticks));
      blocks.add(alarms.chart(ticks));
    }
    blocks.add(new Grid(header(), rows));
  }

  /** A rate over sittings. */
  private static final class Band {
    private final Messages words;
    private final String what;
    private final List<double[]> rate = new ArrayList<>();
    private final List<double[]> lower = new ArrayList<>();
    private final List<double[]> upper = new ArrayList<>();

    Band(Messages words, String what) {
      this.words = words;
      this.what = what;
    }

    void add(int at, Rated of) {
      if (of.of() > 0) {
        rate.add(new double[] {at, 100 * of.share()});
        lower.add(new double[] {at, 100 * of.lower()});
        upper.add(new double[] {at, 100 * of.upper()});
      }
    }

    Page.Chart chart(List<String> ticks) {
      String name = words.get("drill.history." + what);
      return new Page.Chart(
          new Plot(
              words.get("drill.history.share", name),
              words.get("drill.history.sitting"),
              words.get("drill.history.per-cent"),
              ticks,
              List.of(
                  new Plot.Series(words.get("drill.history.upper"), Plot.Style.DASHED, upper),
                  new Plot.Series(words.get("drill.history.lower"), Plot.Style.DASHED, lower),
                  new Plot.Series(name, Plot.Style.LINE, rate))));
    }
  }

  private void findings() {
    List<List<String>> rows = new ArrayList<>();
    for (History.ByFinding f : history.findings()) {
      rows.add(
          List.of(
              Telling.kind(f.finding(), words),
              said.rate(f.missed()),
              said.rate(f.notRight()),
              words.get("drill.of", f.step(), DrillRules.builtIn().due().count()),
              share(f.step())));
    }
    if (rows.isEmpty()) {
      return;
    }
    blocks.add(new Heading(get("by-finding")));
    blocks.add(
        new Grid(
            Stream.of("defect", "called-sound", "not-right", "step", "due").map(this::get).toList(),
            rows));
    text(get("schedule"));
  }

  private String share(int step) {
    return step == 1 ? get("most-often") : get("as-often", 1 << (step - 1));
  }

  private void confusion() {
    Optional<Figures> figures = history.figures();
    List<List<String>> rows = new ArrayList<>();
    if (figures.isPresent()) {
      for (Map.Entry<String, Map<String, Integer>> truth : figures.get().confusion().entrySet()) {
        List<String> calls = new ArrayList<>();
        truth.getValue().entrySet().stream()
            .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
            .forEach(call -> calls.add(said.call(call.getKey()) + " " + call.getValue()));
        rows.add(List.of(said.call(truth.getKey()), String.join(", ", calls)));
      }
    }
    if (!rows.isEmpty()) {
      blocks.add(new Heading(get("confusion")));
      blocks.add(new Grid(List.of(get("in-truth"), get("called")), rows));
    }
  }

  private void ownWork() {
    if (history.own().isEmpty()) {
      return;
    }
    blocks.add(new Heading(get("own")));
    List<List<String>> rows = new ArrayList<>();
    history
        .besideTool()
        .forEach(
            (side, count) ->
                rows.add(List.of(words.get("drill.beside." + side.id() + ".title"), "" + count)));
    blocks.add(
        new Grid(
            List.of(words.counted("drill.history.rows", history.own().size()), get("joints")),
            rows));
    text(get("own-text"));
  }

  private void text(String paragraph) {
    blocks.add(new Text(paragraph, false));
  }
}
