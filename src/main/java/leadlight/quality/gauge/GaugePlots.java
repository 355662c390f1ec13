package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Plot;
import leadlight.quality.Plot.Series;
import leadlight.quality.Plot.Style;
import leadlight.quality.gauge.variance.Cells;
import leadlight.quality.gauge.variance.Spread;

/** Plots of a gauge study. */
public final class GaugePlots {

  private GaugePlots() {}

  /** Every reading over its part, with the parts' means joined. */
  public static Plot byPart(String measure, Cells cells) {
    List<double[]> readings = new ArrayList<>();
    List<double[]> means = new ArrayList<>();
    for (int i = 0; i < cells.parts().size(); i++) {
      int at = i;
      cells.values().get(i).stream()
          .flatMap(List::stream)
          .forEach(v -> readings.add(new double[] {at, v}));
      means.add(new double[] {i, cells.partMean(i)});
    }
    return plot(measure + " by part", measure, cells.parts(), means, readings);
  }

  /** Every reading over its operator, less its part's mean. */
  public static Plot byOperator(String measure, String word, Cells cells) {
    List<double[]> readings = new ArrayList<>();
    List<double[]> means = new ArrayList<>();
    for (int j = 0; j < cells.operators().size(); j++) {
      List<Double> mine = new ArrayList<>();
      for (int i = 0; i < cells.parts().size(); i++) {
        double part = cells.partMean(i);
        cells.cell(i, j).forEach(v -> mine.add(v - part));
      }
      int at = j;
      mine.forEach(v -> readings.add(new double[] {at, v}));
      double mean = mine.stream().mapToDouble(v -> v).average().orElse(0);
      means.add(new double[] {j, mean});
    }
    return plot(
        measure + " less its part's mean, by " + word, word, cells.operators(), means, readings);
  }

  private static Plot plot(
      String title,
      String axis,
      List<String> names,
      List<double[]> means,
      List<double[]> readings) {
    String unit = GaugeWords.unit(title.split(" ", 2)[0]);
    return new Plot(
        title,
        axis.equals(title.split(" ", 2)[0]) ? "part" : axis,
        "reading" + (unit.isEmpty() ? "" : "," + unit),
        names,
        List.of(
            new Series("average", Style.LINE, means),
            new Series("reading", Style.POINTS, readings)));
  }

  /** The components beside each other. */
  public static Plot components(String measure, Spread spread) {
    List<Double> sizes =
        List.of(spread.equipment(), spread.operators(), spread.gauge(), spread.parts());
    List<double[]> bars = new ArrayList<>();
    for (int i = 0; i < sizes.size(); i++) {
      bars.add(new double[] {i, sizes.get(i)});
    }
    return new Plot(
        measure + ": standard deviations",
        "component",
        GaugeWords.withUnit("standard deviation", measure),
        List.of("repeat", "reproduce", "gauge", "parts"),
        List.of(new Series("", Style.BARS, bars)));
  }
}
