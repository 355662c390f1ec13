package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Plot.Series;
import leadlight.quality.Plot.Style;
import leadlight.quality.Words;

/** Pages of charts other than Shewhart's. */
public final class OtherChartPages {

  private OtherChartPages() {}

  /**
   * The page of a g or t chart.
   *
   * @param word g or t
   * @param what "sound joints between defects" or "days between defects"
   */
  public static Page rare(RareEvents chart, String word, String what) {
    List<RareEvents.Gap> gaps = chart.gaps();
    List<RareEvents.Gap> beyond = gaps.stream().filter(gap -> gap.isBeyond(chart)).toList();
    Page.Builder page =
        new Page.Builder()
            .strong(
                "%s: %d gaps, %s."
                    .formatted(
                        what,
                        gaps.size(),
                        beyond.isEmpty()
                            ? "no signal"
                            : Words.count(beyond.size(), "gap") + " beyond the limits"));
    if (gaps.size() < 2 || chart.upper() == 0) {
      return page.text(
              "A gap needs two defects, and some room between them: there is nothing to chart yet.")
          .page(word + " chart");
    }
    int few = ChartRules.builtIn().fewGaps();
    if (gaps.size() < few) {
      page.text(
          "Fewer than %d gaps: the limits are as unsure as their mean (common practice)."
              .formatted(few));
    }
    return page.chart(plot(chart, word, what, beyond))
        .text(
            "Limits at 0.135 % on either side, the tails of three sigma, of the "
                + (word.equals("g") ? "geometric (Benneyan 2001)" : "exponential")
                + " law of the mean gap: median %s, limits %s and %s."
                    .formatted(
                        number(chart.centre()), number(chart.lower()), number(chart.upper())))
        .text(
            chart.lower() < 1
                ? "No gap is short enough to be a signal here: more defects than before show in runs of short gaps, or on a CUSUM chart."
                : "")
        .text(sameDay(word, gaps))
        .grid(
            List.of("until", "gap", ""),
            gaps.stream()
                .map(
                    gap ->
                        List.of(
                            gap.until(),
                            number(gap.length()),
                            !gap.isBeyond(chart)
                                ? ""
                                : gap.length() > chart.upper()
                                    ? "fewer defects than before"
                                    : "more defects than before"))
                .toList())
        .page(word + " chart");
  }

  private static String sameDay(String word, List<RareEvents.Gap> gaps) {
    long none = gaps.stream().filter(gap -> gap.length() == 0).count();
    return word.equals("g") || none == 0
        ? ""
        : "%d of %d gaps end on the day on which they began: days tell no hours. Where that is usual, defects are not rare by day: a u chart by day or a g chart says more."
            .formatted(none, gaps.size());
  }

  /** Joints and days are whole. */
  private static String number(double value) {
    return value == Math.rint(value) ? Words.fixed(value, 0) : Words.significant(value);
  }

  private static Plot plot(
      RareEvents chart, String word, String what, List<RareEvents.Gap> beyond) {
    List<RareEvents.Gap> gaps = chart.gaps();
    List<double[]> values = new ArrayList<>();
    List<double[]> alarms = new ArrayList<>();
    for (int i = 0; i < gaps.size(); i++) {
      double[] point = {i, gaps.get(i).length()};
      values.add(point);
      if (beyond.contains(gaps.get(i))) {
        alarms.add(point);
      }
    }
    return new Plot(
        word + " chart",
        "defect that ends the gap",
        what,
        gaps.stream().map(RareEvents.Gap::until).toList(),
        List.of(
            level("limits", chart.upper(), gaps.size()),
            level("", chart.lower(), gaps.size()),
            level("", chart.centre(), gaps.size()),
            new Series("", Style.LINE, values),
            new Series("gap", Style.POINTS, values),
            new Series("signal", Style.ALARM, alarms)));
  }

  private static Series level(String name, double at, int size) {
    return new Series(
        name, Style.DASHED, List.of(new double[] {-0.5, at}, new double[] {size - 0.5, at}));
  }

  /** The page of a cumulative sum chart of a chart's groups. */
  public static Page cusum(ControlChart chart, String by) {
    ChartRules.Cusum design = ChartRules.builtIn().cusum();
    List<Standardised.Point> points = Standardised.cusum(chart.z(), design);
    return small(
        chart,
        by,
        points,
        "CUSUM chart",
        true,
        ("Allowance k %s, decision h %s standard deviations: a shift of one standard deviation is"
                + " looked for; in control a false alarm comes once in about %d groups (%s).")
            .formatted(design.allowance(), design.decision(), design.runLength(), design.source()));
  }

  /** The page of a moving average chart of a chart's groups. */
  public static Page ewma(ControlChart chart, String by) {
    ChartRules.Ewma design = ChartRules.builtIn().ewma();
    List<Standardised.Point> points = Standardised.ewma(chart.z(), design);
    return small(
        chart,
        by,
        points,
        "EWMA chart",
        false,
        ("Weight %s, limits at %s standard deviations of the average; in control a false alarm comes"
                + " once in about %d groups (%s).")
            .formatted(design.weight(), design.width(), design.runLength(), design.source()));
  }

  private static Page small(
      ControlChart chart,
      String by,
      List<Standardised.Point> points,
      String title,
      boolean twoSums,
      String design) {
    List<String> names = chart.points().stream().map(p -> p.group().name()).toList();
    List<Integer> signals =
        IntStream.range(0, points.size()).filter(i -> points.get(i).isSignal()).boxed().toList();
    List<Series> series = new ArrayList<>();
    series.add(new Series("limit", Style.DASHED, at(points, Standardised.Point::limit)));
    series.add(new Series("", Style.DASHED, at(points, p -> -p.limit())));
    series.add(
        new Series(twoSums ? "up" : "average", Style.LINE, at(points, Standardised.Point::high)));
    if (twoSums) {
      series.add(new Series("down", Style.POINTS, at(points, p -> -p.low())));
    }
    series.add(
        new Series(
            "signal",
            Style.ALARM,
            signals.stream()
                .map(
                    i -> {
                      Standardised.Point p = points.get(i);
                      return new double[] {i, p.high() >= p.low() ? p.high() : -p.low()};
                    })
                .toList()));
    return new Page.Builder()
        .strong(
            signals.isEmpty()
                ? "No lasting shift is seen in %d groups.".formatted(points.size())
                : "A lasting shift is seen, first at %s.".formatted(names.get(signals.get(0))))
        .chart(new Plot(title + " by " + by, by, "standard deviations", names, series))
        .text(design)
        .text(
            "Groups enter as standard deviations from the centre of the "
                + chart.kind().word()
                + " chart; with few counts a group, that promise holds only roughly.")
        .page(title + " by " + by);
  }

  private static List<double[]> at(
      List<Standardised.Point> points,
      java.util.function.ToDoubleFunction<Standardised.Point> value) {
    return IntStream.range(0, points.size())
        .mapToObj(i -> new double[] {i, value.applyAsDouble(points.get(i))})
        .toList();
  }
}
