package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.FindingKind;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Evidence;
import leadlight.model.joint.Finding;
import leadlight.model.remark.NoteOfJoint;

/**
 * Metal that crosses a gap, on a make of photo that the opinions do not know. The reader was never
 * shown to tell bridges there, and likeness to other gaps tells none where all are flooded; that
 * the gap has the leads' colour from end to end was learned from no picture.
 */
final class MetalSeen {

  private final JointSheet sheet;

  MetalSeen(JointSheet sheet) {
    this.sheet = sheet;
  }

  /** Whether it was seen on either side of the joint. */
  boolean seen() {
    return sheet.faults().stream().anyMatch(this::seen);
  }

  /** Whether it is what was seen of this fault. */
  boolean seen(Chances.Fault fault) {
    return evidence(fault).isPresent();
  }

  /** What is called for it. */
  List<Finding> findings() {
    return sheet.faults().stream().flatMap(fault -> finding(fault).stream()).toList();
  }

  private Optional<Finding> finding(Chances.Fault fault) {
    return evidence(fault)
        .map(
            seen ->
                sheet.finding(
                    new Chances.Fault(
                        FindingKind.BRIDGE,
                        fault.neighbourPin(),
                        seen.probability(),
                        OptionalDouble.empty())));
  }

  private Optional<Evidence> evidence(Chances.Fault fault) {
    return sheet.rules().unfamiliarPhoto() && fault.kind() == FindingKind.BRIDGE
        ? sheet.joint().evidence().stream()
            .filter(seen -> seen.kind() == FindingKind.BRIDGE)
            .filter(seen -> seen.neighbourPin() == fault.neighbourPin())
            .filter(
                seen ->
                    seen.measured().filter(NoteOfJoint.MetalAcross.class::isInstance).isPresent())
            .findFirst()
        : Optional.empty();
  }
}
