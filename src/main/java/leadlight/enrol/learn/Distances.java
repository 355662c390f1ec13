package leadlight.enrol.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import leadlight.enrol.learn.Enrolment.Cloud;
import leadlight.enrol.learn.Enrolment.Shown;

/** How far joints lie from those that were shown: root mean square over blocks of like numbers. */
public final class Distances {

  private final double[] spreads;

  public Distances(double[] spreads) {
    this.spreads = spreads;
  }

  /** How far the joints shown lie from their like in other photos. */
  static Cloud cloud(List<Shown> joints, int photos, double leastSpread) {
    double[] spreads = spreads(joints, leastSpread);
    Distances distances = new Distances(spreads);
    double joint = 0;
    double row = 0;
    for (int i = 0; i < photos; i++) {
      int photo = i;
      List<Double> nearest = new ArrayList<>();
      for (Shown shown : joints) {
        if (shown.photo() == photo) {
          double least =
              distances.nearest(
                  shown.features(),
                  joints,
                  it -> it.photo() != photo && it.soldered() == shown.soldered());
          if (Double.isFinite(least)) {
            nearest.add(least);
          }
        }
      }
      joint = nearest.stream().reduce(joint, Math::max);
      row = nearest.isEmpty() ? row : Math.max(row, middle(nearest));
    }
    return new Cloud(spreads, joint, row);
  }

  private static double[] spreads(List<Shown> joints, double least) {
    double[] mean = new double[JointFeatures.COUNT];
    for (Shown joint : joints) {
      for (int i = 0; i < mean.length; i++) {
        mean[i] += joint.features()[i] / (double) joints.size();
      }
    }
    double[] spreads = new double[JointFeatures.BLOCKS.size()];
    if (joints.isEmpty()) {
      Arrays.fill(spreads, least);
      return spreads;
    }
    for (int b = 0; b < spreads.length; b++) {
      JointFeatures.Block block = JointFeatures.BLOCKS.get(b);
      double sum = 0;
      for (Shown joint : joints) {
        for (int i = block.from(); i < block.to(); i++) {
          sum += Math.pow(joint.features()[i] - mean[i], 2);
        }
      }
      spreads[b] = Math.max(least, Math.sqrt(sum / joints.size() / (block.to() - block.from())));
    }
    return spreads;
  }

  /** Distance to the nearest of the joints that count; infinite if none does. */
  double nearest(float[] features, List<Shown> joints, Predicate<Shown> counts) {
    return joints.stream()
        .filter(counts)
        .mapToDouble(it -> between(features, it.features()))
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The shown joint that lies nearest. */
  public Shown nearest(float[] features, List<Shown> joints) {
    return joints.stream()
        .min(Comparator.comparingDouble(it -> between(features, it.features())))
        .orElseThrow();
  }

  public double between(float[] a, float[] b) {
    double sum = 0;
    for (int block = 0; block < spreads.length; block++) {
      sum += inBlock(block, a, b);
    }
    return Math.sqrt(sum / spreads.length);
  }

  /** Mean square in one block. */
  public double inBlock(int block, float[] a, float[] b) {
    JointFeatures.Block it = JointFeatures.BLOCKS.get(block);
    double sum = 0;
    for (int i = it.from(); i < it.to(); i++) {
      double off = (a[i] - b[i]) / spreads[block];
      sum += off * off;
    }
    return sum / (it.to() - it.from());
  }

  public static double middle(List<Double> values) {
    double[] sorted = values.stream().mapToDouble(Double::doubleValue).toArray();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
