package leadlight.quality.chart;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import leadlight.model.UserError;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * A control chart with limits at three standard deviations, cut at zero (and at one for shares).
 *
 * @param kind which
 * @param design how it is drawn
 * @param centre mean of all, weighted by size
 * @param points a point a subgroup
 * @param z distance of each point from the centre in its standard deviations, widened or not
 * @param dispersionP significance of the test that groups differ by chance alone (chi-squared test
 *     of homogeneity over the baseline); empty for one group or without defects
 * @param spread by how much the limits are widened (Laney 2002, Quality Engineering 14:531); 1 if
 *     they are not
 * @param signals what the run rules say; the first rule alone if the order means nothing
 */
public record ControlChart(
    ChartKind kind,
    Design design,
    double centre,
    List<Point> points,
    List<Double> z,
    Optional<Double> dispersionP,
    double spread,
    List<RunRules.Signal> signals) {

  /** Mean range of two standard normal values (from memory, control-chart table d2). */
  private static final double D2 = 1.128;

  /**
   * How a chart is drawn.
   *
   * @param ordered true if the groups follow each other in time
   * @param rules numbers of the run rules that are asked
   * @param baseline so many groups set centre and limits; 0 for all
   * @param laney limits widened by what the groups vary more than chance (p', u')
   */
  public record Design(boolean ordered, Set<Integer> rules, int baseline, boolean laney) {

    /** All rules that the order allows, all groups, no widening. */
    public static Design plain(boolean ordered) {
      return new Design(ordered, ordered ? Set.of(1, 2, 3, 4) : Set.of(1), 0, false);
    }
  }

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
   * Makes a chart of all groups.
   *
   * @param ordered true if the subgroups follow each other in time
   * @throws UserError if there is no subgroup, or a share above one, or a c chart of unequal sizes
   */
  public static ControlChart of(ChartKind kind, List<Subgroup> groups, boolean ordered) {
    return of(kind, groups, Design.plain(ordered));
  }

  /**
   * Makes a chart.
   *
   * @throws UserError if there is no subgroup, or a share above one, or a c chart of unequal sizes,
   *     or fewer groups than the baseline, or a baseline without any spread before other groups
   */
  public static ControlChart of(ChartKind kind, List<Subgroup> groups, Design design) {
    check(kind, groups);
    if (design.baseline > groups.size()) {
      throw new UserError(
          "a baseline of %d groups cannot be taken from %d; take a shorter one"
              .formatted(design.baseline, groups.size()));
    }
    int base = design.baseline == 0 ? groups.size() : design.baseline;
    List<Subgroup> first = groups.subList(0, base);
    double count = first.stream().mapToDouble(Subgroup::count).sum();
    double size = first.stream().mapToDouble(g -> size(kind, g)).sum();
    double centre = count / size;
    if (base < groups.size() && (count == 0 || kind == ChartKind.P && count == size)) {
      throw new UserError(
          "the first %d groups have no spread, %s: limits of them find nothing; take a longer baseline"
              .formatted(base, count == 0 ? "not one defect" : "not one sound unit"));
    }
    List<Double> plain = groups.stream().map(g -> z(kind, g, centre, 1)).toList();
    double spread = design.laney ? widening(plain.subList(0, base)) : 1;
    List<Double> z = plain.stream().map(v -> v / spread).toList();
    return new ControlChart(
        kind,
        design,
        kind.scale() * centre,
        groups.stream().map(g -> point(kind, g, centre, spread)).toList(),
        z,
        dispersion(plain.subList(0, base)),
        spread,
        RunRules.of(z, design.rules));
  }

  private static double z(ChartKind kind, Subgroup group, double centre, double spread) {
    Point point = point(kind, group, centre, spread);
    return point.sigma() > 0 ? (point.value() - kind.scale() * centre) / point.sigma() : 0.0;
  }

  /** Mean moving range of the standardised groups over d2. */
  private static double widening(List<Double> z) {
    double ranges = 0;
    for (int i = 1; i < z.size(); i++) {
      ranges += Math.abs(z.get(i) - z.get(i - 1));
    }
    double sigma = z.size() < 2 ? 1 : ranges / (z.size() - 1) / D2;
    return sigma > 0 ? sigma : 1;
  }

  private static Optional<Double> dispersion(List<Double> z) {
    double squares = z.stream().mapToDouble(v -> v * v).sum();
    return z.size() < 2 || squares == 0
        ? Optional.empty()
        : Optional.of(ChiSquaredDistribution.of(z.size() - 1.0).survivalProbability(squares));
  }

  private static double size(ChartKind kind, Subgroup group) {
    return kind == ChartKind.C ? 1 : group.size();
  }

  private static Point point(ChartKind kind, Subgroup group, double centre, double spread) {
    double size = size(kind, group);
    double variance = kind == ChartKind.P ? centre * (1 - centre) : centre;
    double sigma = spread * Math.sqrt(variance / size);
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
