package leadlight.quality;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;

/**
 * A control chart with limits at three standard deviations, cut at zero (and at one for shares).
 *
 * @param kind which
 * @param centre mean of all, weighted by size
 * @param points a point a subgroup
 * @param signals what the run rules say; the first rule alone if the order means nothing
 */
public record ControlChart(
    ChartKind kind, double centre, List<Point> points, List<RunRules.Signal> signals) {

  /**
   * A point.
   *
   * @param group its counts
   * @param value what is plotted
   * @param sigma standard deviation at the centre for this size; 0 if there are no defects at all
   * @param lower lower limit
   * @param upper upper limit
   */
  public record Point(Subgroup group, double value, double sigma, double lower, double upper) {}

  /**
   * Makes a chart.
   *
   * @param ordered true if the subgroups follow each other in time
   * @throws UserError if there is no subgroup, or a share above one, or a c chart of unequal sizes
   */
  public static ControlChart of(ChartKind kind, List<Subgroup> groups, boolean ordered) {
    check(kind, groups);
    double count = groups.stream().mapToDouble(Subgroup::count).sum();
    double size = groups.stream().mapToDouble(g -> size(kind, g)).sum();
    double centre = count / size;
    List<Point> points = new ArrayList<>();
    List<Double> z = new ArrayList<>();
    for (Subgroup group : groups) {
      Point point = point(kind, group, centre);
      points.add(point);
      z.add(point.sigma() > 0 ? (point.value() - kind.scale() * centre) / point.sigma() : 0.0);
    }
    return new ControlChart(kind, kind.scale() * centre, points, RunRules.of(z, ordered));
  }

  private static double size(ChartKind kind, Subgroup group) {
    return kind == ChartKind.C ? 1 : group.size();
  }

  private static Point point(ChartKind kind, Subgroup group, double centre) {
    double size = size(kind, group);
    double variance = kind == ChartKind.P ? centre * (1 - centre) : centre;
    double sigma = Math.sqrt(variance / size);
    double most = kind == ChartKind.P ? 1 : Double.MAX_VALUE / kind.scale();
    return new Point(
        group,
        kind.scale() * group.count() / size,
        kind.scale() * sigma,
        kind.scale() * Math.max(0, centre - 3 * sigma),
        kind.scale() * Math.min(most, centre + 3 * sigma));
  }

  private static void check(ChartKind kind, List<Subgroup> groups) {
    if (groups.isEmpty()) {
      throw new UserError("there is no subgroup to chart; give at least one line");
    }
    for (Subgroup group : groups) {
      if (kind == ChartKind.P && group.count() > group.size()) {
        throw new UserError(
            "%s: %d nonconforming of %d units cannot be; a u chart takes several defects a unit"
                .formatted(group.name(), group.count(), group.size()));
      }
      if (kind == ChartKind.C && group.size() != groups.get(0).size()) {
        throw new UserError(
            "a c chart needs groups of one size, %s has %d and %s %d; use a u chart"
                .formatted(groups.get(0).name(), groups.get(0).size(), group.name(), group.size()));
      }
    }
  }
}
