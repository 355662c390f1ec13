package leadlight.quality.gauge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leadlight.quality.Words;
import leadlight.quality.gauge.variance.Cells;
import leadlight.quality.grades.Grades;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;

/** How often verdicts change by how far the part lies from a limit. */
public final class NearLimit {

  /** Ends of the bands, in standard deviations of the gauge. */
  private static final double[] ENDS = {1, 2, 3, Double.POSITIVE_INFINITY};

  private NearLimit() {}

  /**
   * Lines of a table: distance, parts, verdicts other than the part's usual one.
   *
   * @param flips by part
   */
  public static List<List<String>> lines(
      Cells cells, ClassLimit limit, double gaugeSd, Map<String, Rate> flips) {
    List<List<String>> lines = new ArrayList<>();
    double from = 0;
    for (double end : ENDS) {
      ClusterRate.Builder rate = new ClusterRate.Builder();
      int parts = 0;
      for (int i = 0; i < cells.parts().size(); i++) {
        double distance = limit.distance(cells.partMean(i)) / gaugeSd;
        Rate mine = flips.get(cells.parts().get(i));
        if (mine != null && distance >= from && distance < end) {
          rate.add(Grades.cluster(cells.parts().get(i)), mine.count(), mine.of());
          parts++;
        }
      }
      if (parts > 0) {
        lines.add(List.of(band(from, end), "" + parts, Words.rate(rate.rate())));
      }
      from = end;
    }
    return lines;
  }

  private static String band(double from, double end) {
    return Double.isInfinite(end)
        ? "more than %.0f sigma".formatted(from)
        : "%.0f to %.0f sigma".formatted(from, end);
  }
}
