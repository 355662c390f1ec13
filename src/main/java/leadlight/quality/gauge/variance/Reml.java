package leadlight.quality.gauge.variance;

import java.util.Arrays;
import java.util.List;
import leadlight.model.UserError;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Variance components of parts and operators, crossed and random with interaction, for cells of any
 * size: restricted maximum likelihood (Patterson and Thompson 1971, Biometrika 58:545; Searle,
 * Casella and McCulloch 1992, Variance Components, 6.6).
 *
 * <p>Readings of a cell enter by their mean and their squares about it. All variances are in units
 * of the repeats' one, which is profiled out; the three ratios are sought by a simplex.
 */
public final class Reml {

  private static final int MOST_STEPS = 4000;
  private static final double TOLERANCE = 1e-12;

  private final Cells cells;

  private Reml(Cells cells) {
    this.cells = cells;
  }

  /**
   * The components; the cells must be connected.
   *
   * @throws UserError if the readings have no spread, or none that can be computed with
   */
  public static Spread of(Cells cells) {
    check(cells);
    try {
      return sought(cells);
    } catch (MathRuntimeException e) {
      throw new UserError(
          "the spread of these readings is not found; look for a slip among them, or fill all cells");
    }
  }

  private static void check(Cells cells) {
    double most =
        cells.values().stream()
            .flatMap(List::stream)
            .flatMap(List::stream)
            .mapToDouble(Math::abs)
            .max()
            .orElse(0);
    if (!Double.isFinite(most * most * cells.size())) {
      throw new UserError(
          "a reading of %s is too large to be squared; give readings in a larger unit"
              .formatted(most));
    }
    // What rounding alone leaves of equal readings is no spread.
    if (cells.within() <= cells.size() * Math.pow(Math.ulp(most), 2)) {
      throw new UserError(
          "all repeats of a part by an operator are equal: the gauge shows too few digits to tell its"
              + " spread; read more of them");
    }
  }

  private static Spread sought(Cells cells) {
    Reml reml = new Reml(cells);
    double[] best = null;
    double least = Double.POSITIVE_INFINITY;
    // The likelihood may have a second hill where a component is 0.
    for (double start : new double[] {1, 0.1}) {
      double[] found = reml.search(new double[] {3 * start, start, start / 2});
      double deviance = reml.deviance(found);
      if (deviance < least) {
        least = deviance;
        best = found;
      }
    }
    double[] ratio = squares(java.util.Objects.requireNonNull(best));
    double error = Math.sqrt(reml.new Fit(ratio).error());
    return new Spread(error, error * Math.sqrt(ratio[1] + ratio[2]), error * Math.sqrt(ratio[0]));
  }

  private double[] search(double[] start) {
    SimplexOptimizer optimizer = new SimplexOptimizer(TOLERANCE, TOLERANCE);
    double[] at = start;
    // A simplex that has shrunk too early is opened once more where it stopped.
    for (int round = 0; round < 3; round++) {
      at =
          optimizer
              .optimize(
                  new MaxEval(MOST_STEPS),
                  new ObjectiveFunction(this::deviance),
                  GoalType.MINIMIZE,
                  new InitialGuess(at),
                  new NelderMeadSimplex(3, 0.5))
              .getPoint();
    }
    return at;
  }

  /** Twice the negative restricted log likelihood, but for a constant, of root ratios. */
  private double deviance(double[] roots) {
    return new Fit(squares(roots)).deviance();
  }

  private static double[] squares(double[] roots) {
    return Arrays.stream(roots).map(r -> r * r).toArray();
  }

  /** One set of ratios. Blocks of parts are inverted by hand, operators by their own matrix. */
  private final class Fit {
    private final double part;
    private final double operator;
    private final double crossed;
    private final RealMatrix between;
    private final RealVector meanBy;
    private final RealVector oneBy;
    private double meanMean;
    private double meanOne;
    private double oneOne;
    private double logDet;

    private Fit(double[] ratio) {
      part = ratio[0];
      operator = ratio[1];
      crossed = ratio[2];
      int o = cells.operators().size();
      between = new Array2DRowRealMatrix(o, o);
      meanBy = new ArrayRealVector(o);
      oneBy = new ArrayRealVector(o);
      for (int i = 0; i < cells.parts().size(); i++) {
        addPart(i);
      }
      addOperators(o);
    }

    private void addPart(int i) {
      int o = cells.operators().size();
      double[] weight = new double[o];
      double sum = 0;
      double meanSum = 0;
      for (int j = 0; j < o; j++) {
        int n = cells.cell(i, j).size();
        if (n > 0) {
          weight[j] = 1 / (crossed + 1.0 / n);
          sum += weight[j];
          meanSum += weight[j] * cells.mean(i, j);
          logDet += Math.log(crossed + 1.0 / n) + Math.log(n);
        }
      }
      double shrink = part / (1 + part * sum);
      logDet += Math.log1p(part * sum);
      meanOne += meanSum - shrink * sum * meanSum;
      oneOne += sum - shrink * sum * sum;
      for (int j = 0; j < o; j++) {
        double mean = weight[j] > 0 ? cells.mean(i, j) : 0;
        meanMean += weight[j] * mean * mean;
        meanBy.addToEntry(j, weight[j] * mean - shrink * weight[j] * meanSum);
        oneBy.addToEntry(j, weight[j] - shrink * weight[j] * sum);
        between.addToEntry(j, j, weight[j]);
        for (int k = 0; k < o; k++) {
          between.addToEntry(j, k, -shrink * weight[j] * weight[k]);
        }
      }
      meanMean -= shrink * meanSum * meanSum;
    }

    /** Woodbury's identity over the operators. */
    private void addOperators(int o) {
      RealMatrix inner = between.scalarMultiply(operator);
      for (int j = 0; j < o; j++) {
        inner.addToEntry(j, j, 1);
      }
      LUDecomposition lu = new LUDecomposition(inner);
      logDet += Math.log(lu.getDeterminant());
      RealVector mean = lu.getSolver().solve(meanBy).mapMultiply(operator);
      RealVector one = lu.getSolver().solve(oneBy).mapMultiply(operator);
      meanMean -= meanBy.dotProduct(mean);
      meanOne -= oneBy.dotProduct(mean);
      oneOne -= oneBy.dotProduct(one);
    }

    /** Variance of the repeats. */
    double error() {
      return (cells.within() + meanMean - meanOne * meanOne / oneOne) / (cells.size() - 1);
    }

    double deviance() {
      return (cells.size() - 1) * Math.log(error()) + logDet + Math.log(oneOne);
    }
  }
}
