package leadlight.quality.gauge.variance;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import leadlight.quality.Estimate;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * How surely the components of a gauge are known: generalised confidence intervals (Weerahandi
 * 1993, Journal of the American Statistical Association 88:899; for gauge studies Hamada and
 * Weerahandi 2000, Journal of Quality Technology 32:241). Each mean square over its chi-squared
 * draw is a draw of its expectation; the draws are one of each of {@value #DRAWS} equal parts of
 * the distribution, in an order by a fixed seed. Uneven cells: unweighted sums of squares of the
 * cells' means and their harmonic mean size (Burdick, Borror and Montgomery 2005, Design and
 * Analysis of Gauge R&R Studies, chapter 7).
 */
public final class Sureness {

  private static final int DRAWS = 4000;
  private static final long SEED = 20261128;

  private final List<Spread> draws;

  private Sureness(List<Spread> draws) {
    this.draws = draws;
  }

  /** Draws components; empty if a cell is empty or nothing was repeated. */
  public static Optional<Sureness> of(Cells cells) {
    int p = cells.parts().size();
    int o = cells.operators().size();
    if (!cells.isFull() || p < 2 || o < 2 || cells.size() <= p * o) {
      return Optional.empty();
    }
    double harmonic = p * o / sum(cells, n -> 1.0 / n);
    double[] free = {p - 1, o - 1, (p - 1.0) * (o - 1), cells.size() - p * o};
    double[] squares = squares(cells, harmonic);
    double[][] means = new double[4][];
    for (int k = 0; k < 4; k++) {
      means[k] = draws(squares[k], free[k], SEED + k);
    }
    return Optional.of(
        new Sureness(
            IntStream.range(0, DRAWS)
                .mapToObj(
                    d -> spread(means[0][d], means[1][d], means[2][d], means[3][d], p, o, harmonic))
                .toList()));
  }

  private static double sum(Cells cells, DoubleUnaryOperator of) {
    return cells.values().stream()
        .flatMap(List::stream)
        .mapToDouble(cell -> of.applyAsDouble(cell.size()))
        .sum();
  }

  /** Sums of squares of parts, operators, interaction and repeats. */
  private static double[] squares(Cells cells, double size) {
    int p = cells.parts().size();
    int o = cells.operators().size();
    double[] part = new double[p];
    double[] operator = new double[o];
    double all = 0;
    for (int i = 0; i < p; i++) {
      for (int j = 0; j < o; j++) {
        double mean = cells.mean(i, j);
        part[i] += mean / o;
        operator[j] += mean / p;
        all += mean / p / o;
      }
    }
    double[] squares = new double[4];
    for (int i = 0; i < p; i++) {
      squares[0] += size * o * (part[i] - all) * (part[i] - all);
      for (int j = 0; j < o; j++) {
        double rest = cells.mean(i, j) - part[i] - operator[j] + all;
        squares[2] += size * rest * rest;
      }
    }
    for (int j = 0; j < o; j++) {
      squares[1] += size * p * (operator[j] - all) * (operator[j] - all);
    }
    squares[3] = cells.within();
    return squares;
  }

  private static double[] draws(double squares, double free, long seed) {
    ChiSquaredDistribution chi = ChiSquaredDistribution.of(free);
    List<Double> draws =
        new java.util.ArrayList<>(
            IntStream.range(0, DRAWS)
                .mapToObj(d -> squares / chi.inverseCumulativeProbability((d + 0.5) / DRAWS))
                .toList());
    Collections.shuffle(draws, new Random(seed));
    return draws.stream().mapToDouble(d -> d).toArray();
  }

  private static Spread spread(
      double parts, double operators, double crossed, double error, int p, int o, double n) {
    double byPart = Math.max(0, (parts - crossed) / o / n);
    double byOperator = Math.max(0, (operators - crossed) / p / n);
    double both = Math.max(0, (crossed - error) / n);
    return new Spread(Math.sqrt(error), Math.sqrt(byOperator + both), Math.sqrt(byPart));
  }

  /** 95 % interval of a figure, held to its value. */
  public Estimate of(double value, ToDoubleFunction<Spread> figure) {
    double[] sorted = draws.stream().mapToDouble(figure).sorted().toArray();
    double lower = sorted[(int) (0.025 * DRAWS)];
    double upper = sorted[DRAWS - 1 - (int) (0.025 * DRAWS)];
    return new Estimate(value, Math.min(value, lower), Math.max(value, upper));
  }

  /** The draws' figures in order; for tests. */
  double[] sorted(ToDoubleFunction<Spread> figure) {
    return Arrays.stream(draws.stream().mapToDouble(figure).toArray()).sorted().toArray();
  }
}
