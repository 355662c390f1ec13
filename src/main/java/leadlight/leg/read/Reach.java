package leadlight.leg.read;

import java.util.ArrayList;
import java.util.List;
import leadlight.numeric.Logistic;

/**
 * How far solder reaches, as far as it is known: for each of some reaches, how likely there is
 * more.
 *
 * @param steps reaches, ascending from 0
 * @param chances of more than each, none greater than the one before
 * @param whole the greatest reach there can be
 */
public record Reach(List<Double> steps, List<Double> chances, double whole) {

  /** Copies the lists; refuses such of different lengths. */
  public Reach {
    steps = List.copyOf(steps);
    chances = List.copyOf(chances);
    if (steps.size() != chances.size() || steps.size() < 2) {
      throw new IllegalArgumentException("a chance for each of at least two steps is needed");
    }
  }

  /**
   * From a network's scores.
   *
   * @param scores logits, one a step
   * @param scale from a score to a logit that was seen to hold
   */
  static Reach of(List<Double> steps, float[] scores, LegReaderFile.Scale scale, double whole) {
    List<Double> chances = new ArrayList<>();
    double least = 1;
    for (float score : scores) {
      least = Math.min(least, Logistic.of(scale.slope() * score + scale.shift()));
      chances.add(least);
    }
    return new Reach(steps, chances, whole);
  }

  /** Probability that it is at least so much; between two steps on a straight line. */
  public double atLeast(double value) {
    for (int i = 1; i < steps.size(); i++) {
      if (value <= steps.get(i)) {
        double from = steps.get(i - 1);
        double within = (value - from) / (steps.get(i) - from);
        return chances.get(i - 1) + within * (chances.get(i) - chances.get(i - 1));
      }
    }
    return chances.get(chances.size() - 1);
  }

  /** Probability that there is none at all. */
  public double none() {
    return 1 - chances.get(0);
  }

  /** Its mean: the integral of the chances of more (from memory, any book on probability). */
  public double mean() {
    double sum = 0;
    for (int i = 0; i < steps.size(); i++) {
      sum += chances.get(i) * (end(i) - steps.get(i));
    }
    return sum;
  }

  /** Its standard deviation, from the integral of 2 x times the chance of more than x. */
  public double u() {
    double square = 0;
    for (int i = 0; i < steps.size(); i++) {
      square += chances.get(i) * (end(i) - steps.get(i)) * (end(i) + steps.get(i));
    }
    return Math.sqrt(Math.max(0, square - mean() * mean()));
  }

  private double end(int step) {
    return step + 1 < steps.size() ? steps.get(step + 1) : whole;
  }
}
