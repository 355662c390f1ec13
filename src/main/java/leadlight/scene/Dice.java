package leadlight.scene;

import java.util.Map;
import java.util.SplittableRandom;

/** Seeded choices. */
final class Dice {

  private final SplittableRandom random;

  Dice(long seed) {
    this.random = new SplittableRandom(seed);
  }

  long seed() {
    return random.nextLong() >>> 12;
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  double even(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  double even(double[] range) {
    return even(range[0], range[1]);
  }

  /** Even in the logarithm. */
  double scale(double[] range) {
    return range[0] * Math.pow(range[1] / range[0], random.nextDouble());
  }

  double sign() {
    return random.nextBoolean() ? 1 : -1;
  }

  int below(int bound) {
    return random.nextInt(bound);
  }

  /**
   * One key by weight; keys are taken in their natural order, so a file's order does not matter.
   */
  <K extends Comparable<K>> K pick(Map<K, Double> weights) {
    double sum = weights.values().stream().mapToDouble(Double::doubleValue).sum();
    double at = random.nextDouble() * sum;
    K last = null;
    for (Map.Entry<K, Double> entry : new java.util.TreeMap<>(weights).entrySet()) {
      last = entry.getKey();
      at -= entry.getValue();
      if (at < 0) {
        return last;
      }
    }
    return last;
  }
}
