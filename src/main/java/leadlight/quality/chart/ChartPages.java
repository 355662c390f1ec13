package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Words;

/** Pages of control charts. */
public final class ChartPages {

  private static final ChartRules RULES = ChartRules.builtIn();

  private ChartPages() {}

  /** The plot of a chart; points are joined if they follow in time. */
  private static Plot plot(ControlChart chart, String by, boolean ordered) {
    List<ControlChart.Point> points = chart.points();
    List<double[]> alarms =
        chart.signals().stream()
            .map(RunRules.Signal::index)
            .distinct()
            .map(i -> new double[] {i, points.get(i).value()})
            .toList();
    List<Plot.Series> series = new ArrayList<>();
    series.add(new Plot.Series("limits", Plot.Style.DASHED, steps(points, true)));
    series.add(new Plot.Series("", Plot.Style.DASHED, steps(points, false)));
    series.add(
        new Plot.Series(
            "",
            Plot.Style.DASHED,
            List.of(
                new double[] {-0.5, chart.centre()},
                new double[] {points.size() - 0.5, chart.centre()})));
    List<double[]> values =
        IntStream.range(0, points.size())
            .mapToObj(i -> new double[] {i, points.get(i).value()})
            .toList();
    if (ordered) {
      series.add(new Plot.Series("", Plot.Style.LINE, values));
    }
    series.add(new Plot.Series("group", Plot.Style.POINTS, values));
    series.add(new Plot.Series("signal", Plot.Style.ALARM, alarms));
    return new Plot(
        chart.kind().word() + " chart by " + by,
        by,
        chart.kind().axis(),
        points.stream().map(p -> p.group().name()).toList(),
        series);
  }

  private static List<double[]> steps(List<ControlChart.Point> points, boolean upper) {
    List<double[]> line = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      double y = upper ? points.get(i).upper() : points.get(i).lower();
      line.add(new double[] {i - 0.5, y});
      line.add(new double[] {i + 0.5, y});
    }
    return line;
  }

  /** The plot of a Pareto analysis. */
  private static Plot plot(Pareto pareto) {
    List<double[]> bars =
        IntStream.range(0, pareto.bars().size())
            .mapToObj(i -> new double[] {i, pareto.bars().get(i).count()})
            .toList();
    return new Plot(
        "Findings, the most frequent first",
        "finding",
        "count",
        pareto.bars().stream().map(Pareto.Bar::cause).toList(),
        List.of(new Plot.Series("", Plot.Style.BARS, bars)));
  }

  /**
   * A page.
   *
   * @param ordered true if the groups follow in time
   */
  public static Page page(ControlChart chart, Pareto pareto, String by, boolean ordered) {
    return page(chart, pareto, by, ordered, List.of());
  }

  /**
   * A page.
   *
   * @param left what was not counted and why
   */
  public static Page page(
      ControlChart chart, Pareto pareto, String by, boolean ordered, List<String> left) {
    Page.Builder page = new Page.Builder().strong(summary(chart)).chart(plot(chart, by, ordered));
    left.forEach(page::text);
    design(chart, page);
    if (chart.points().stream().allMatch(point -> point.group().count() == 0)) {
      page.text("There is not one defect: limits of zero tell nothing yet; the next one decides.");
    }
    List<List<String>> signals =
        chart.signals().stream()
            .map(
                s ->
                    List.of(
                        chart.points().get(s.index()).group().name(),
                        s.rule(),
                        s.high() ? "above" : "below"))
            .toList();
    page.heading("Signals")
        .text(
            (signals.isEmpty() ? "None. " : "")
                + "Rules: Western Electric, Statistical Quality Control Handbook, 1956."
                + falseAlarms(chart)
                + (ordered ? "" : " Groups without an order: the first rule alone is asked."))
        .grid(List.of("group", "rule", "side"), signals);
    if (!pareto.bars().isEmpty()) {
      page.heading("Findings")
          .chart(plot(pareto))
          .grid(
              List.of("finding", "count", "up to here"),
              pareto.bars().stream()
                  .map(b -> List.of(b.cause(), "" + b.count(), Words.percent(b.upTo())))
                  .toList());
    }
    return page.heading("Groups")
        .grid(List.of(by, "size", "count", "value", "limits"), rows(chart))
        .page(chart.kind().word() + " chart by " + by);
  }

  /** What the limits rest on, and where they do not hold what they promise. */
  private static void design(ControlChart chart, Page.Builder page) {
    int base = chart.design().baseline();
    int groups = base == 0 ? chart.points().size() : base;
    if (base > 0) {
      page.text("Centre and limits are set by the first %d groups alone.".formatted(base));
    }
    double expected =
        chart.points().stream().limit(groups).mapToInt(p -> p.group().count()).average().orElse(0);
    if (expected > 0 && expected < RULES.leastPerGroup()) {
      page.text(
          ("On average %s a group, fewer than %d: limits by three sigma give more false alarms than"
                  + " they promise; a g or t chart (--kind g, t) suits rare defects.")
              .formatted(Words.significant(expected), RULES.leastPerGroup()));
    }
    if (chart.design().ordered() && groups < RULES.fewGroups()) {
      page.text(
          "Limits from %d groups, fewer than %d, are unsure themselves."
              .formatted(groups, RULES.fewGroups()));
    }
    chart
        .dispersionP()
        .ifPresent(
            p ->
                page.text(
                    "Chi-squared test that groups differ by chance alone: %s%s."
                        .formatted(Words.p(p), dispersed(chart, p))));
  }

  private static String dispersed(ControlChart chart, double p) {
    if (chart.design().laney()) {
      return "; limits are %s times as wide (Laney's p' and u', 2002)"
          .formatted(Words.fixed(chart.spread(), 2));
    }
    if (p >= RULES.overdispersedP()) {
      return "";
    }
    return chart.design().ordered()
        ? "; they differ more, so some signals are only that: --laney widens the limits by it"
        : "; they differ more. It takes joints as unlike each other: where those of one photo are"
            + " alike, groups of few photos differ more by chance";
  }

  private static String falseAlarms(ControlChart chart) {
    String rules =
        chart.design().rules().stream()
            .sorted()
            .map(String::valueOf)
            .collect(Collectors.joining(","));
    Double groups = RULES.groupsToFalseAlarm().get(rules);
    return groups == null
        ? ""
        : " Asked: %s; a chart in control gives a false alarm once in about %.0f groups (%s)."
            .formatted(rules, groups, "Champ and Woodall 1987, normal values");
  }

  private static String summary(ControlChart chart) {
    int size = chart.points().stream().mapToInt(p -> p.group().size()).sum();
    int count = chart.points().stream().mapToInt(p -> p.group().count()).sum();
    return "%s in %s: mean %s, %d in %d; %s."
        .formatted(
            chart.kind().axis(),
            Words.count(chart.points().size(), "group"),
            Words.significant(chart.centre()),
            count,
            size,
            chart.signals().isEmpty()
                ? "no signal"
                : Words.count(chart.signals().size(), "signal"));
  }

  private static List<List<String>> rows(ControlChart chart) {
    return chart.points().stream()
        .map(
            p ->
                List.of(
                    p.group().name(),
                    "" + p.group().size(),
                    "" + p.group().count(),
                    Words.significant(p.value()),
                    Words.significant(p.lower()) + " to " + Words.significant(p.upper())))
        .toList();
  }
}
