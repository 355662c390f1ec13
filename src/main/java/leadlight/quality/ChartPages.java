package leadlight.quality;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Pages of control charts. */
public final class ChartPages {

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
    Page.Builder page = new Page.Builder().strong(summary(chart)).chart(plot(chart, by, ordered));
    if (chart.centre() == 0) {
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
