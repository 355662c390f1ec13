package leadlight.pipeline;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import leadlight.enrol.RowLook;
import leadlight.enrol.learn.Enrolment;
import leadlight.grade.Grader;
import leadlight.joint.JointMeter;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.joint.Joint;
import leadlight.model.row.RowOutcome;

/** From a scored row to what a bench is enrolled by, and judges by. */
final class BenchLook {

  /** Keeps the log odds of a chance of 0 or 1 finite; far beyond where a bench clamps them. */
  private static final double LEAST = 1e-6;

  private final Grader grader;
  private final boolean unfamiliar;

  /**
   * Takes whose opinion is the general one.
   *
   * @param unfamiliar whether that was never shown to be right on this make of photo: then it is no
   *     opinion, even or odds
   */
  BenchLook(Grader grader, boolean unfamiliar) {
    this.grader = grader;
    this.unfamiliar = unfamiliar;
  }

  RowLook of(JointMeter.CutRow cut, RowOutcome.Found row, List<Joint> joints) {
    Enrolment.Setting setting =
        new Enrolment.Setting(
            row.pitchPx(),
            blurPx(joints).map(blur -> blur / row.pitchPx()),
            cut.dark(),
            cut.bright(),
            !unfamiliar);
    return new RowLook(cut.pictures(), setting, joints.stream().map(this::joint).toList());
  }

  private RowLook.Joint joint(Joint joint) {
    double chance = grader.combined(joint).notHeld();
    double inside = Math.max(LEAST, Math.min(1 - LEAST, chance));
    return new RowLook.Joint(
        joint.unfitBecause().isEmpty(), unfamiliar ? 0 : Math.log(inside / (1 - inside)));
  }

  /** Middle edge sigma; absent if no edge tells. */
  static Optional<Double> blurPx(List<Joint> joints) {
    double[] blurs =
        joints.stream()
            .map(joint -> joint.measures().get(Measure.EDGE_BLUR))
            .flatMapToDouble(it -> it == null ? DoubleStream.empty() : one(it))
            .sorted()
            .toArray();
    return blurs.length == 0 ? Optional.empty() : Optional.of(blurs[blurs.length / 2]);
  }

  private static DoubleStream one(Quantity quantity) {
    return DoubleStream.of(quantity.value());
  }
}
