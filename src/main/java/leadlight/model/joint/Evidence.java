package leadlight.model.joint;

import java.util.List;
import java.util.Optional;
import leadlight.model.Checks;
import leadlight.model.FindingKind;
import leadlight.model.remark.Note;
import leadlight.model.remark.Reason;

/**
 * How strongly the photo speaks for one kind of finding at one joint.
 *
 * @param kind the finding
 * @param probability calibrated chance that the joint has it, 0 to 1
 * @param neighbourPin the other pin of a bridge; 0 for every other finding
 * @param measured what was measured, where that is more than signals
 * @param reasons the signals that speak for it, loudest first
 */
public record Evidence(
    FindingKind kind,
    double probability,
    int neighbourPin,
    Optional<Note> measured,
    List<Reason> reasons) {

  /** Copies the list; refuses a probability outside 0 to 1. */
  public Evidence {
    reasons = List.copyOf(reasons);
    Checks.within("probability", probability, 0, 1);
    Checks.atLeast("neighbourPin", neighbourPin, 0);
  }
}
