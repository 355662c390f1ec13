package leadlight.quality.gauge;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.DoubleStream;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Risks of deciding by a measured value (JCGM 106:2012, clause 9: global risks). The process is
 * normal, the measurement unbiased and normal.
 *
 * @param mean of the process
 * @param processSd standard deviation of the process, 0 or more
 * @param u standard uncertainty of a reading, above 0
 * @param lower tolerance limit; minus infinity for none
 * @param upper tolerance limit; infinity for none
 * @param guard the acceptance limits lie so far inside the tolerance limits, the limits from which
 *     a reading is called beyond them so far outside; between them it is left open
 */
public record Conformity(
    double mean, double processSd, double u, double lower, double upper, double guard) {

  /** Beyond so many standard deviations nothing is left that eight digits show. */
  private static final double REACH = 9;

  private static final int PANELS = 48;
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(24);

  /** Refuses what is no process. */
  public Conformity {
    if (!(processSd >= 0 && u > 0 && lower < upper && Double.isFinite(mean + processSd + u))) {
      throw new IllegalArgumentException("no process: " + mean + ", " + processSd + ", " + u);
    }
  }

  /** The consumer's risk: a joint is beyond the limits and is accepted. */
  public double falseAccept() {
    return over(this::accepted, Double.NEGATIVE_INFINITY, lower)
        + over(this::accepted, upper, Double.POSITIVE_INFINITY);
  }

  /** The producer's risk: a joint is within the limits and is not accepted. */
  public double falseReject() {
    return over(x -> 1 - accepted(x), lower, upper);
  }

  /**
   * A joint is within the limits and is called beyond them: the part of that risk that is acted on.
   */
  public double falseCall() {
    return over(this::called, lower, upper);
  }

  /** The share of joints that is neither accepted nor called. */
  public double leftOpen() {
    return over(
        x -> 1 - accepted(x) - called(x), Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /** The share of the process beyond the limits. */
  public double beyond() {
    return over(x -> 1, Double.NEGATIVE_INFINITY, lower)
        + over(x -> 1, upper, Double.POSITIVE_INFINITY);
  }

  /** The chance that at least one joint of a lot is beyond and accepted. */
  public double falseAcceptInLot(int joints) {
    return -Math.expm1(joints * Math.log1p(-Math.min(falseAccept(), 1 - 1e-16)));
  }

  /** The chance that a joint of this true value is accepted. */
  private double accepted(double x) {
    double low = lower + guard;
    double high = upper - guard;
    if (low >= high) {
      return 0;
    }
    NormalDistribution reading = NormalDistribution.of(x, u);
    double above = high == Double.POSITIVE_INFINITY ? 1 : reading.cumulativeProbability(high);
    double below = low == Double.NEGATIVE_INFINITY ? 0 : reading.cumulativeProbability(low);
    return above - below;
  }

  /** The chance that a joint of this true value is called beyond the limits. */
  private double called(double x) {
    NormalDistribution reading = NormalDistribution.of(x, u);
    double above =
        upper == Double.POSITIVE_INFINITY ? 0 : reading.survivalProbability(upper + guard);
    double below =
        lower == Double.NEGATIVE_INFINITY ? 0 : reading.cumulativeProbability(lower - guard);
    return above + below;
  }

  private double over(DoubleUnaryOperator of, double from, double to) {
    if (processSd == 0) {
      return mean > from && mean <= to ? of.applyAsDouble(mean) : 0;
    }
    double start = Math.max(from, mean - REACH * processSd);
    double end = Math.min(to, mean + REACH * processSd);
    if (start >= end) {
      return 0;
    }
    NormalDistribution process = NormalDistribution.of(mean, processSd);
    List<Double> edges = edges(start, end);
    double sum = 0;
    for (int i = 1; i < edges.size(); i++) {
      double half = (edges.get(i) - edges.get(i - 1)) / 2;
      double middle = (edges.get(i) + edges.get(i - 1)) / 2;
      sum +=
          half
              * RULE.integrate(
                  t -> {
                    double x = middle + half * t;
                    return process.density(x) * of.applyAsDouble(x);
                  });
    }
    return sum;
  }

  /** Panels of the range, finer where acceptance changes. */
  private List<Double> edges(double start, double end) {
    DoubleStream even =
        java.util.stream.IntStream.rangeClosed(0, PANELS)
            .mapToDouble(i -> start + (end - start) * i / PANELS);
    DoubleStream fine =
        DoubleStream.of(lower - guard, lower + guard, upper - guard, upper + guard)
            .filter(Double::isFinite)
            .flatMap(at -> DoubleStream.of(-6, -3, -1.5, 0, 1.5, 3, 6).map(k -> at + k * u))
            .filter(x -> x > start && x < end);
    return DoubleStream.concat(even, fine).sorted().distinct().boxed().toList();
  }
}
