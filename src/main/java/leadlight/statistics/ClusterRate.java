package leadlight.statistics;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.data.DataFile;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * So many of so many, counted in clusters: joints of one photo, boards of one lot. What lies in one
 * cluster is alike, so a cluster tells less than as many units from everywhere.
 *
 * <p>Interval: Wilson's at the effective size, the number of units divided by the design effect 1 +
 * (m - 1) r (Kish 1965, Survey Sampling; m the mean size of a unit's own cluster, r the likeness).
 * Likeness by variance analysis (Fleiss, Levin and Paik 2003, Statistical Methods for Rates and
 * Proportions, 15.2), drawn towards a prior one as far as there are few events: few events cannot
 * tell it, and an interval that believes them is too narrow. As the spread between clusters is
 * known from k of them alone, the effective size is lowered by the squared ratio of the normal
 * quantile to Student's t (Korn and Graubard 1998, Survey Methodology 24:193-201), whose degrees of
 * freedom are k - 1 over the squared part of the variance that likeness adds (Satterthwaite 1946,
 * Biometrics Bulletin 2:110-114).
 *
 * @param parts a part a cluster; empty ones may be among them
 */
public record ClusterRate(List<Part> parts) implements Rated {

  /** The counts of one cluster. */
  public record Part(int count, int of) {

    /** Refuses a count below 0 or above {@code of}. */
    public Part {
      if (count < 0 || count > of) {
        throw new IllegalArgumentException(count + " of " + of + " is no rate");
      }
    }
  }

  /** Copies; clusters without units say nothing and are left out. */
  public ClusterRate {
    parts = parts.stream().filter(part -> part.of > 0).toList();
  }

  /** Gathers units one by one. */
  public static final class Builder {
    private final Map<Object, int[]> parts = new LinkedHashMap<>();

    /** Adds a unit of a cluster. */
    public Builder add(Object cluster, boolean hit) {
      return add(cluster, hit ? 1 : 0, 1);
    }

    /** Adds units of a cluster. */
    public Builder add(Object cluster, int count, int of) {
      int[] part = parts.computeIfAbsent(cluster, key -> new int[2]);
      part[0] += count;
      part[1] += of;
      return this;
    }

    /** The rate. */
    public ClusterRate rate() {
      List<Part> all = new ArrayList<>();
      parts.values().forEach(part -> all.add(new Part(part[0], part[1])));
      return new ClusterRate(all);
    }
  }

  /** How many. */
  @Override
  public int count() {
    return parts.stream().mapToInt(Part::count).sum();
  }

  /** Out of how many; 0 means that there is nothing to rate. */
  @Override
  public int of() {
    return parts.stream().mapToInt(Part::of).sum();
  }

  /** The share; NaN if there is nothing to rate. */
  @Override
  public double share() {
    return (double) count() / of();
  }

  /** The same as if every unit stood alone. */
  public Rate plain() {
    return new Rate(count(), of());
  }

  /** Clusters with a unit. */
  public int clusters() {
    return parts.size();
  }

  /** Lower end of the 95 % interval; 0 if there is nothing to rate. */
  @Override
  public double lower() {
    return interval().lower();
  }

  /** Upper end of the 95 % interval; 1 if there is nothing to rate. */
  @Override
  public double upper() {
    return interval().upper();
  }

  private Wilson.Interval interval() {
    double asKnown = Wilson.Z / quantile();
    return Wilson.of(share(), of() / designEffect() * asKnown * asKnown);
  }

  /** The 0.975 quantile of Student's t; the normal one where the data show no spread. */
  private double quantile() {
    double added = 1 - 1 / designEffect();
    return measuredLikeness().isEmpty() || added == 0
        ? Wilson.Z
        : TDistribution.of((parts.size() - 1) / (added * added))
            .inverseCumulativeProbability(0.975);
  }

  /**
   * How many times as many units it takes as if each stood alone; 1 if there is nothing to rate.
   */
  public double designEffect() {
    return 1 + Math.max(0, ownSize() - 1) * likeness();
  }

  /** Mean size of the cluster that a unit lies in: sum of squares over sum. */
  private double ownSize() {
    double squares = parts.stream().mapToDouble(part -> (double) part.of * part.of).sum();
    return of() == 0 ? 1 : squares / of();
  }

  /** The likeness that the interval rests on, 0 to 1. */
  double likeness() {
    ClusterRules rules = ClusterRules.BUILT_IN;
    double events = Math.min(count(), of() - count());
    double own = measuredLikeness().isPresent() ? events : 0;
    double drawn =
        (measuredLikeness().orElse(0) * own + rules.priorLikeness() * rules.priorWeight())
            / (own + rules.priorWeight());
    return Math.min(1, Math.max(0, drawn));
  }

  /** The likeness of these data alone; empty with one cluster, one unit a cluster or no event. */
  OptionalDouble measuredLikeness() {
    int k = parts.size();
    int n = of();
    if (k < 2 || n <= k || count() == 0 || count() == n) {
      return OptionalDouble.empty();
    }
    double between = 0;
    double within = 0;
    for (Part part : parts) {
      double share = (double) part.count / part.of;
      between += part.of * (share - share()) * (share - share());
      within += part.of * share * (1 - share);
    }
    double meanBetween = between / (k - 1);
    double meanWithin = within / (n - k);
    double size = (n - ownSize()) / (k - 1);
    return OptionalDouble.of((meanBetween - meanWithin) / (meanBetween + (size - 1) * meanWithin));
  }

  /**
   * How alike the units of a cluster are thought to be before any is seen: {@code
   * models/statistics/clusters.json}.
   *
   * @param priorLikeness intraclass correlation
   * @param priorWeight how many events of the data's own outweigh it
   * @param source where both come from
   */
  record ClusterRules(
      @JsonProperty(required = true) double priorLikeness,
      @JsonProperty(required = true) double priorWeight,
      @JsonProperty(required = true) String source) {

    static final ClusterRules BUILT_IN =
        DataFile.builtIn("statistics/clusters.json").read(ClusterRules.class);
  }
}
