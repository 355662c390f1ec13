package leadlight.quality.agreement;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import leadlight.quality.Estimate;

/**
 * Counts of two graders against each other. Cohen's kappa: Cohen 1960, Educational and
 * Psychological Measurement 20:37; weighted: Cohen 1968, Psychological Bulletin 70:213; standard
 * error: Fleiss, Cohen and Everitt 1969, Psychological Bulletin 72:323 (large samples).
 *
 * @param categories names of rows and columns
 * @param counts rows the first grader, columns the second
 */
public record CrossTable(List<String> categories, List<List<Integer>> counts) {

  /** Copies; the counts must be square. */
  public CrossTable {
    categories = List.copyOf(categories);
    counts = counts.stream().map(List::copyOf).toList();
    for (List<Integer> row : counts) {
      if (row.size() != categories.size() || counts.size() != row.size()) {
        throw new IllegalArgumentException("a cross table is square");
      }
    }
  }

  /** Items counted. */
  public int total() {
    return counts.stream().flatMap(List::stream).mapToInt(Integer::intValue).sum();
  }

  /** Share on the diagonal; empty without items. */
  public Optional<Double> agreement() {
    return total() == 0 ? Optional.empty() : Optional.of(observed(CrossTable::same));
  }

  /** Cohen's kappa; empty if chance alone agrees fully (one category only) or without items. */
  public Optional<Estimate> kappa() {
    return kappa(CrossTable::same);
  }

  /**
   * Weighted kappa.
   *
   * @param disagreement weight of each cell, 0 on the diagonal
   */
  public Optional<Estimate> weightedKappa(List<List<Double>> disagreement) {
    double most = disagreement.stream().flatMap(List::stream).mapToDouble(d -> d).max().orElse(0);
    if (!(most > 0)) {
      throw new IllegalArgumentException("some disagreement must weigh more than 0");
    }
    return kappa((i, j) -> 1 - disagreement.get(i).get(j) / most);
  }

  private Optional<Estimate> kappa(ToDoubleBiFunction<Integer, Integer> weight) {
    if (total() == 0) {
      return Optional.empty();
    }
    double po = observed(weight);
    double pe = 0;
    for (int i = 0; i < size(); i++) {
      for (int j = 0; j < size(); j++) {
        pe += weight.applyAsDouble(i, j) * row(i) * column(j);
      }
    }
    if (1 - pe < 1e-12) {
      return Optional.empty();
    }
    double kappa = (po - pe) / (1 - pe);
    return Optional.of(Estimate.correlation(kappa, standardError(weight, kappa, pe)));
  }

  private double standardError(
      ToDoubleBiFunction<Integer, Integer> weight, double kappa, double pe) {
    double sum = 0;
    for (int i = 0; i < size(); i++) {
      for (int j = 0; j < size(); j++) {
        double marginal = meanWeight(weight, i, true) + meanWeight(weight, j, false);
        double term = weight.applyAsDouble(i, j) - marginal * (1 - kappa);
        sum += share(i, j) * term * term;
      }
    }
    double centre = kappa - pe * (1 - kappa);
    return Math.sqrt(Math.max(0, sum - centre * centre) / total()) / (1 - pe);
  }

  /** Mean weight of a row over the columns' shares, or of a column over the rows'. */
  private double meanWeight(ToDoubleBiFunction<Integer, Integer> weight, int of, boolean isRow) {
    double mean = 0;
    for (int k = 0; k < size(); k++) {
      mean +=
          isRow ? weight.applyAsDouble(of, k) * column(k) : weight.applyAsDouble(k, of) * row(k);
    }
    return mean;
  }

  private double observed(ToDoubleBiFunction<Integer, Integer> weight) {
    double po = 0;
    for (int i = 0; i < size(); i++) {
      for (int j = 0; j < size(); j++) {
        po += weight.applyAsDouble(i, j) * share(i, j);
      }
    }
    return po;
  }

  private static double same(int i, int j) {
    return i == j ? 1 : 0;
  }

  private int size() {
    return categories.size();
  }

  private double share(int i, int j) {
    return (double) counts.get(i).get(j) / total();
  }

  private double row(int i) {
    return counts.get(i).stream().mapToInt(Integer::intValue).sum() / (double) total();
  }

  private double column(int j) {
    return counts.stream().mapToInt(r -> r.get(j)).sum() / (double) total();
  }
}
