package leadlight.rowcheck;

import java.util.Arrays;
import java.util.List;
import leadlight.joint.JointMeter;
import leadlight.model.result.Settings;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.photo.Photo;
import leadlight.reader.SecondReader;

/** How strange the second reader finds rows at a glance. */
public final class RowEye {

  private final JointMeter meter;
  private final RowSpec spec;
  private final RowLimits limits = RowLimits.builtIn();

  public RowEye(JointMeter meter, Settings settings) {
    this.meter = meter;
    this.spec = settings.row();
  }

  /** Whether all leads stand one pitch apart. */
  boolean even() {
    return spec.even();
  }

  /** A few joints, to look at many places about a row. */
  RowSample sample(RowOutcome.Found row) {
    return RowSample.of(spec, row);
  }

  /** All joints of the row, pin 1 first. */
  List<SecondReader.Glance> joints(Photo photo, RowOutcome.Found row) {
    return joints(photo, spec, row);
  }

  /** The row's strangeness: that of its middle joint. */
  double strangeness(Photo photo, RowOutcome.Found row) {
    return strangeness(photo, spec, row);
  }

  double strangeness(Photo photo, RowSample few) {
    return strangeness(photo, few.spec(), few.row());
  }

  /** The row's strangeness, or that of a few of its joints if these are no joints. */
  double firstLook(Photo photo, RowOutcome.Found row) {
    RowSample few = sample(row);
    double first = strangeness(photo, few);
    return first >= limits.doubtFrom().value() || few.row().equals(row)
        ? first
        : strangeness(photo, row);
  }

  private double strangeness(Photo photo, RowSpec of, RowOutcome.Found row) {
    return middle(
        joints(photo, of, row).stream().mapToDouble(SecondReader.Glance::strangeness).toArray());
  }

  private List<SecondReader.Glance> joints(Photo photo, RowSpec of, RowOutcome.Found row) {
    return SecondReader.builtIn().glance(meter.cut(photo.frame(), of, row).pictures());
  }

  static double middle(double[] strangeness) {
    double[] sorted = strangeness.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
