package leadlight.scene.chance;

import java.util.Map;
import java.util.SplittableRandom;

/** Seeded choices. */
public final class Dice {

  /** Share of draws in each outer part of a range of four. */
  private static final double TAIL = 0.12;

  private final SplittableRandom random;

  public Dice(long seed) {
    this.random = new SplittableRandom(seed);
  }

  public long seed() {
    return random.nextLong() >>> 12;
  }

  public boolean chance(double share) {
    return random.nextDouble() < share;
  }

  public double even(double least, double most) {
    return least + (most - least) * random.nextDouble();
  }

  /** Even over {least, most}; {least, from, to, most} says where most draws lie. */
  public double even(double[] range) {
    double[] part = part(range);
    return even(part[0], part[1]);
  }

  /** As {@link #even(double[])}, but in the logarithm. */
  public double scale(double[] range) {
    double[] part = part(range);
    return part[0] * Math.pow(part[1] / part[0], random.nextDouble());
  }

  private double[] part(double[] range) {
    if (range.length == 2) {
      return range;
    }
    double at = random.nextDouble();
    double below = range[1] > range[0] ? TAIL : 0;
    double above = range[3] > range[2] ? TAIL : 0;
    int k = at < below ? 0 : at < 1 - above ? 1 : 2;
    return new double[] {range[k], range[k + 1]};
  }

  public double sign() {
    return random.nextBoolean() ? 1 : -1;
  }

  public int below(int bound) {
    return random.nextInt(bound);
  }

  /**
   * One key by weight; keys are taken in their natural order, so a file's order does not matter.
   */
  public <K extends Comparable<K>> K pick(Map<K, Double> weights) {
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
