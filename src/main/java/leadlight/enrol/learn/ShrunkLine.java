package leadlight.enrol.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import leadlight.enrol.learn.Enrolment.Line;
import leadlight.enrol.learn.Enrolment.Shown;
import leadlight.model.UserError;
import leadlight.numeric.Logistic;

/**
 * Learns a line from joints that were shown: logistic regression with a normal prior (le Cessie and
 * van Houwelingen 1992, Ridge estimators in logistic regression) about the general opinion, so that
 * few joints move it little. Both kinds weigh alike, however many were shown of each. Newton's
 * method from the prior's middle; the order of the joints decides the last bits, and it is fixed.
 */
final class ShrunkLine {

  private final EnrolTuning tuning;
  private final List<Shown> joints;
  private final double[] mean = new double[JointFeatures.COUNT];
  private final double[] scale = new double[JointFeatures.COUNT];

  private ShrunkLine(List<Shown> joints, EnrolTuning tuning) {
    this.joints = joints;
    this.tuning = tuning;
    centre();
    JointFeatures.BLOCKS.forEach(this::scale);
  }

  /** The line of joints of both kinds. */
  static Line of(List<Shown> joints, EnrolTuning tuning) {
    return new ShrunkLine(joints, tuning).fitted();
  }

  /** The joints that are left, both kinds needed for a line. */
  static boolean both(List<Shown> joints) {
    return joints.stream().anyMatch(Shown::soldered)
        && joints.stream().anyMatch(Predicate.not(Shown::soldered));
  }

  private void centre() {
    for (Shown joint : joints) {
      for (int i = 0; i < mean.length; i++) {
        mean[i] += joint.features()[i] / (double) joints.size();
      }
    }
  }

  /** Numbers of a block vary alike and together as one number of variance one. */
  private void scale(JointFeatures.Block block) {
    double sum = 0;
    for (Shown joint : joints) {
      for (int i = block.from(); i < block.to(); i++) {
        double off = joint.features()[i] - mean[i];
        sum += off * off;
      }
    }
    double spread = Math.sqrt(sum / joints.size() / (block.to() - block.from()));
    for (int i = block.from(); i < block.to(); i++) {
      scale[i] = Math.max(tuning.leastSpread().value(), spread) * Math.sqrt(JointFeatures.COUNT);
    }
  }

  private Line fitted() {
    List<double[]> rows = new ArrayList<>();
    joints.forEach(joint -> rows.add(row(joint)));
    int count = JointFeatures.COUNT + 2;
    double[] prior = new double[count];
    prior[1] = 1;
    double[] pull = new double[count];
    Arrays.fill(pull, tuning.pullOfPicture().value());
    pull[0] = tuning.pullOfGeneral().value();
    pull[1] = tuning.pullOfGeneral().value();
    return unscaled(still(rows, prior, pull));
  }

  /** Steps until it stands still: a line on its way is no line. */
  private double[] still(List<double[]> rows, double[] prior, double[] pull) {
    double[] at = prior.clone();
    for (int step = 0; step < tuning.mostSteps().value(); step++) {
      double[] move = newton(rows, at, prior, pull);
      double greatest = 0;
      for (int i = 0; i < at.length; i++) {
        at[i] -= move[i];
        greatest = Math.max(greatest, Math.abs(move[i]));
      }
      if (greatest < tuning.still().value()) {
        return at;
      }
    }
    throw new UserError(
        "no line settles between the joints shown sound and unsoldered; look at the photos, and"
            + " leave out what shows neither well");
  }

  private double[] row(Shown joint) {
    double[] row = new double[JointFeatures.COUNT + 2];
    row[0] = 1;
    row[1] = joint.general();
    for (int i = 0; i < mean.length; i++) {
      row[i + 2] = (joint.features()[i] - mean[i]) / scale[i];
    }
    return row;
  }

  private double[] newton(List<double[]> rows, double[] at, double[] prior, double[] pull) {
    int count = at.length;
    double[][] curvature = new double[count][count];
    double[] slope = new double[count];
    for (int i = 0; i < count; i++) {
      slope[i] = pull[i] * (at[i] - prior[i]);
      curvature[i][i] = pull[i];
    }
    long sound = joints.stream().filter(Shown::soldered).count();
    double half = joints.size() / 2.0;
    for (int j = 0; j < rows.size(); j++) {
      boolean soldered = joints.get(j).soldered();
      double weight = half / (soldered ? sound : joints.size() - sound);
      add(rows.get(j), soldered ? 0 : 1, weight, at, slope, curvature);
    }
    return Cholesky.solved(curvature, slope);
  }

  private static void add(
      double[] row, double truth, double weight, double[] at, double[] slope, double[][] curved) {
    double z = 0;
    for (int i = 0; i < row.length; i++) {
      z += row[i] * at[i];
    }
    double chance = Logistic.of(z);
    double bend = weight * chance * (1 - chance);
    for (int i = 0; i < row.length; i++) {
      slope[i] += weight * (chance - truth) * row[i];
      double part = bend * row[i];
      for (int k = 0; k <= i; k++) {
        curved[i][k] += part * row[k];
      }
    }
  }

  /** The same line for numbers as they are. */
  private Line unscaled(double[] at) {
    double shift = at[0];
    double[] weights = new double[mean.length];
    for (int i = 0; i < mean.length; i++) {
      weights[i] = at[i + 2] / scale[i];
      shift -= weights[i] * mean[i];
    }
    return new Line(shift, at[1], weights);
  }
}
