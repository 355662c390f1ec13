package leadlight.pipeline;

import java.util.List;
import leadlight.joint.JointMeter;
import leadlight.model.Joint;
import leadlight.model.RowOutcome;
import leadlight.model.Settings;
import leadlight.photo.Photo;
import leadlight.reader.SecondReader;

/** Whether a found row is counted from its true first lead. Speaks of evenly pitched rows only. */
final class PinCount {

  private final JointMeter meter;
  private final Settings settings;
  private final RowLimits limits = RowLimits.builtIn();

  PinCount(JointMeter meter, Settings settings) {
    this.meter = meter;
    this.settings = settings;
  }

  /** Whether an end of an evenly pitched row looks odd. */
  boolean mayBeOut(List<Joint> joints) {
    double[] strangeness =
        joints.stream()
            .mapToDouble(joint -> joint.byReader().orElseThrow().strangeness())
            .toArray();
    return settings.row().even()
        && Math.max(strangeness[0], strangeness[strangeness.length - 1])
            >= limits.oddOfMiddle().value() * RowCheck.middle(strangeness);
  }

  /**
   * The row counted from its true first lead. Where a row is found one lead off, its end joint lies
   * on bare board and alone looks odd, and one pitch beyond the other end lies a joint like the
   * rest.
   */
  RowOutcome.Found inStep(Photo photo, RowOutcome.Found row) {
    RowOutcome.Found now = row;
    double[] strangeness = strangeness(glance(photo, row));
    for (int step = 0; step < limits.mostSteps().value(); step++) {
      int last = strangeness.length - 1;
      int pins = strangeness[last] > strangeness[0] ? -1 : 1;
      double odd = strangeness[pins < 0 ? last : 0];
      double inner = strangeness[pins < 0 ? last - 1 : 1];
      double oddFrom = limits.oddOfMiddle().value() * RowCheck.middle(strangeness);
      if (odd < oddFrom || inner >= oddFrom) {
        return now;
      }
      RowOutcome.Found moved = MovedRow.byPins(now, pins);
      List<SecondReader.Glance> there = glance(photo, moved);
      SecondReader.Glance beyond = there.get(pins < 0 ? 0 : last);
      boolean joint =
          beyond.strangeness() < limits.jointTo().value()
              && beyond.strangeness() < limits.jointOfOdd().value() * odd
              && beyond.missing() < limits.missingTo().value();
      if (!joint) {
        return now;
      }
      now = moved;
      strangeness = strangeness(there);
    }
    return now;
  }

  private List<SecondReader.Glance> glance(Photo photo, RowOutcome.Found row) {
    return SecondReader.builtIn().glance(meter.pictures(photo.frame(), settings.row(), row));
  }

  private static double[] strangeness(List<SecondReader.Glance> row) {
    return row.stream().mapToDouble(SecondReader.Glance::strangeness).toArray();
  }
}
