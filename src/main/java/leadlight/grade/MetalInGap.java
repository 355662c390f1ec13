package leadlight.grade;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Finding;
import leadlight.model.remark.NoteOfJoint;

/**
 * Metal that crosses a gap: the gap has the leads' colour from end to end, which was learned from
 * no picture. On a make of photo that the opinions do not know a bridge is called for it: the
 * reader was never shown to tell bridges there, and likeness to other gaps tells none where all are
 * flooded. On a familiar make it is a doubt that no opinion takes away.
 */
final class MetalInGap {

  private final JointFindings gathered;

  MetalInGap(JointFindings gathered) {
    this.gathered = gathered;
  }

  /** Whether a bridge is called for it on either side of the joint. */
  boolean called() {
    return gathered.faults().stream().anyMatch(this::called);
  }

  /** Whether this fault is called for it. */
  boolean called(Chances.Fault fault) {
    return gathered.rules().unfamiliarPhoto() && surely(fault).isPresent();
  }

  /** What is called for it. */
  List<Finding> findings() {
    return gathered.faults().stream()
        .filter(this::called)
        .map(fault -> gathered.finding(surely(fault).orElseThrow()))
        .toList();
  }

  /** The fault with the chance that such metal gives it, if it was seen. */
  Optional<Chances.Fault> surely(Chances.Fault fault) {
    return gathered.joint().evidence().stream()
        .filter(seen -> seen.kind() == fault.kind() && seen.neighbourPin() == fault.neighbourPin())
        .filter(
            seen -> seen.measured().filter(NoteOfJoint.MetalAcross.class::isInstance).isPresent())
        .map(
            seen ->
                new Chances.Fault(
                    fault.kind(), fault.neighbourPin(), seen.probability(), OptionalDouble.empty()))
        .findFirst();
  }
}
