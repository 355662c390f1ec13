package leadlight.quality.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import leadlight.quality.Days;
import org.apache.commons.statistics.distribution.ExponentialDistribution;
import org.apache.commons.statistics.distribution.GeometricDistribution;

/**
 * Charts of what lies between rare events, with limits at the tails of three sigma (0.135 %) on
 * either side: g, sound joints between defects, geometric (Benneyan 2001, Health Care Management
 * Science 4:305); t, days between defects, exponential.
 *
 * @param gaps what lies between each defect and the one before it, oldest first
 * @param centre median of the distribution
 * @param lower lower limit; fewer between is a signal of too many defects
 * @param upper upper limit; more between is a signal of fewer defects
 */
public record RareEvents(List<Gap> gaps, double centre, double lower, double upper) {

  private static final double TAIL = 0.00135;

  /**
   * A gap.
   *
   * @param until the day or name of the defect that ends it
   * @param length joints or days
   */
  public record Gap(String until, double length) {

    /** Whether it lies beyond a limit; none of whole joints or days is shorter than part of one. */
    boolean isBeyond(RareEvents chart) {
      return (chart.lower >= 1 && length < chart.lower) || length > chart.upper;
    }
  }

  /** A judged joint in the order of time. */
  public record Looked(String day, boolean defect) {}

  /** Sound joints between defects; what lies before the first defect is not known to be a gap. */
  public static RareEvents g(List<Looked> joints) {
    List<Gap> gaps = new ArrayList<>();
    int sound = -1;
    for (Looked joint : joints) {
      if (joint.defect) {
        if (sound >= 0) {
          gaps.add(new Gap(joint.day, sound));
        }
        sound = 0;
      } else if (sound >= 0) {
        sound++;
      }
    }
    if (gaps.isEmpty()) {
      return new RareEvents(gaps, 0, 0, 0);
    }
    double mean = gaps.stream().mapToDouble(Gap::length).average().orElseThrow();
    GeometricDistribution law = GeometricDistribution.of(1 / (1 + mean));
    return new RareEvents(
        gaps,
        law.inverseCumulativeProbability(0.5),
        law.inverseCumulativeProbability(TAIL),
        law.inverseSurvivalProbability(TAIL));
  }

  /** Days between defects; several on one day are no day apart. */
  public static RareEvents t(List<Looked> joints) {
    List<Gap> gaps = new ArrayList<>();
    LocalDate before = null;
    for (Looked joint : joints) {
      if (joint.defect) {
        LocalDate day = Days.of(joint.day).orElseThrow();
        if (before != null) {
          gaps.add(new Gap(joint.day, ChronoUnit.DAYS.between(before, day)));
        }
        before = day;
      }
    }
    double mean = gaps.stream().mapToDouble(Gap::length).average().orElse(0);
    if (!(mean > 0)) {
      return new RareEvents(gaps, 0, 0, 0);
    }
    ExponentialDistribution law = ExponentialDistribution.of(mean);
    return new RareEvents(
        gaps,
        law.inverseCumulativeProbability(0.5),
        law.inverseCumulativeProbability(TAIL),
        law.inverseSurvivalProbability(TAIL));
  }
}
