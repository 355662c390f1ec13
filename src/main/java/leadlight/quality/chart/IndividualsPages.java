package leadlight.quality.chart;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Page;
import leadlight.quality.Plot;
import leadlight.quality.Plot.Series;
import leadlight.quality.Plot.Style;
import leadlight.quality.Words;

/** A page with a chart of single values for each figure of one thing. */
public final class IndividualsPages {

  private IndividualsPages() {}

  /**
   * The page.
   *
   * @param title what is watched
   * @param result what it comes to, in a line
   */
  public static Page page(String title, String result, List<Individuals> charts) {
    Page.Builder page = new Page.Builder().strong(result);
    for (Individuals chart : charts) {
      page.heading(chart.name()).text(words(chart)).chart(plot(chart));
    }
    return page.text(
            "Limits at three standard deviations of the first values, by their moving range: a value"
                + " beyond them is a signal. Few values leave limits unsure.")
        .page(title);
  }

  private static String words(Individuals chart) {
    return chart
        .limits()
        .map(
            it ->
                "Centre %s, limits %s and %s, from the first %d."
                    .formatted(
                        Words.significant(it.centre()),
                        Words.significant(it.lower()),
                        Words.significant(it.upper()),
                        chart.baseline()))
        .orElse(
            "No limits yet: %d values of %d that set them."
                .formatted(Math.min(chart.values().size(), chart.baseline()), chart.baseline()));
  }

  private static Plot plot(Individuals chart) {
    List<double[]> values = new ArrayList<>();
    List<double[]> alarms = new ArrayList<>();
    for (int i = 0; i < chart.values().size(); i++) {
      int at = i;
      double[] point = {i, chart.values().get(i)};
      values.add(point);
      if (chart.signals().stream().anyMatch(it -> it.index() == at)) {
        alarms.add(point);
      }
    }
    List<Series> series = new ArrayList<>();
    chart
        .limits()
        .ifPresent(
            it -> {
              series.add(level("limits", it.upper(), values.size()));
              series.add(level("", it.lower(), values.size()));
              series.add(level("", it.centre(), values.size()));
            });
    series.add(new Series("", Style.LINE, values));
    series.add(new Series("photo", Style.POINTS, values));
    series.add(new Series("signal", Style.ALARM, alarms));
    return new Plot(chart.name(), "check photo", chart.name(), chart.labels(), series);
  }

  private static Series level(String name, double at, int size) {
    return new Series(
        name, Style.DASHED, List.of(new double[] {-0.5, at}, new double[] {size - 0.5, at}));
  }
}
