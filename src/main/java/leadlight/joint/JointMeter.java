package leadlight.joint;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Joint;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.vision.Frame;

/** Measures each joint of a found row. */
public final class JointMeter {

  /** The joints, pin 1 first. */
  public List<Joint> measure(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return row.leads().stream()
        .map(
            lead ->
                new Joint(lead, Map.of(), List.of(), Optional.of("measuring is not built yet")))
        .toList();
  }

  /**
   * The numbers that judgement rests on, one map a joint, pin 1 first; the last joint has no gap to a
   * next pin, hence fewer entries. For fitting judgement data outside the program.
   */
  public List<Map<String, Double>> features(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return RowSignals.of(frame, spec, row).flat();
  }
}
