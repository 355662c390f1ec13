package leadlight.joint;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import leadlight.model.Joint;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.vision.Frame;

/** Placeholder until measuring is built: measures nothing, and says so at each joint. */
public final class JointMeter {

  /** Joints without measures. */
  public List<Joint> measure(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return row.leads().stream()
        .map(
            lead -> new Joint(lead, Map.of(), List.of(), Optional.of("measuring is not built yet")))
        .toList();
  }

  /** The numbers that judgement rests on, one map a joint, pin 1 first: none yet. */
  public List<Map<String, Double>> features(Frame frame, RowSpec spec, RowOutcome.Found row) {
    return row.leads().stream().map(lead -> Map.<String, Double>of()).toList();
  }
}
