package leadlight.statistics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * So many of so many, counted in clusters: joints of one photo, boards of one lot. What lies in one
 * cluster is alike, so a cluster tells less than as many units from everywhere. Its interval is
 * that of {@link ClusterFit}, and Wilson's where every unit stands alone; it is never narrower than
 * the latter. Where whole clusters are hit and all others not at all, a cluster tells no more than
 * one unit, and the interval is not narrower than Wilson's over clusters. The ends are the share
 * itself where there was no event, or nothing else.
 */
public final class ClusterRate implements Rated {

  private final List<Part> parts;

  /** Found when it is first asked for, as it takes milliseconds; the same whoever finds it. */
  private volatile Optional<ClusterFit> fit = Optional.empty();

  /** The counts of one cluster. */
  public record Part(int count, int of) {

    /** Refuses a count below 0 or above {@code of}. */
    public Part {
      if (count < 0 || count > of) {
        throw new IllegalArgumentException(count + " of " + of + " is no rate");
      }
    }
  }

  /** A part a cluster; clusters without units say nothing and are left out. */
  public ClusterRate(List<Part> parts) {
    this.parts = parts.stream().filter(part -> part.of > 0).toList();
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
    double alone = plain().lower();
    if (eachAlone() || count() == 0) {
      return alone;
    }
    return Math.min(Math.min(alone, fit().lower()), whole().map(Rate::lower).orElse(1.0));
  }

  /** Upper end of the 95 % interval; 1 if there is nothing to rate. */
  @Override
  public double upper() {
    double alone = plain().upper();
    if (eachAlone() || count() == of()) {
      return alone;
    }
    return Math.max(Math.max(alone, fit().upper()), whole().map(Rate::upper).orElse(0.0));
  }

  /**
   * How many times as many units it takes as if each stood alone; 1 if there is nothing to rate. 1
   * + (m - 1) r (Kish 1965, Survey Sampling): m the mean size of a unit's own cluster, r the mean
   * likeness that the data leave.
   */
  public double designEffect() {
    return eachAlone() ? 1 : 1 + (ownSize() - 1) * fit().likeness();
  }

  /** The rate of clusters, where those that are hit are hit as a whole. */
  private Optional<Rate> whole() {
    boolean allOrNone = parts.stream().allMatch(part -> part.count == 0 || part.count == part.of);
    int hit = (int) parts.stream().filter(part -> part.count > 0).count();
    return allOrNone && hit > 0 && hit < parts.size()
        ? Optional.of(new Rate(hit, parts.size()))
        : Optional.empty();
  }

  private boolean eachAlone() {
    return parts.stream().allMatch(part -> part.of == 1);
  }

  private ClusterFit fit() {
    ClusterFit found = fit.orElseGet(() -> ClusterFit.of(parts));
    fit = Optional.of(found);
    return found;
  }

  /** Mean size of the cluster that a unit lies in: sum of squares over sum. */
  private double ownSize() {
    double squares = parts.stream().mapToDouble(part -> (double) part.of * part.of).sum();
    return squares / of();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof ClusterRate rate && parts.equals(rate.parts);
  }

  @Override
  public int hashCode() {
    return parts.hashCode();
  }

  @Override
  public String toString() {
    return count() + " of " + of() + " in " + clusters() + " clusters";
  }
}
