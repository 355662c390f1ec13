package leadlight.model.joint;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.Checks;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;
import leadlight.model.remark.Note;
import leadlight.model.remark.Reason;

/**
 * A finding at a joint.
 *
 * @param kind what
 * @param pins the pins that it concerns, this one first
 * @param verdict what it means in the chosen class
 * @param probability how sure, 0 to 1; states that exclude each other (open, insufficient) share
 *     the probability that it is one of them
 * @param share of such states: the share of the probability that falls to this one; the likeliest
 *     comes first
 * @param measured what was measured, where that is more than signals
 * @param reasons the signals that speak for it, loudest first
 * @param clause the standard's clause that it rests on, with source and provenance
 * @param settleBy how to settle it, by the user's own limits file; empty: the words of its kind
 */
public record Finding(
    FindingKind kind,
    List<Integer> pins,
    Verdict verdict,
    double probability,
    OptionalDouble share,
    Optional<Note> measured,
    List<Reason> reasons,
    String clause,
    String settleBy) {

  /** Copies the lists. */
  public Finding {
    pins = List.copyOf(pins);
    reasons = List.copyOf(reasons);
    Checks.within("probability", probability, 0, 1);
  }
}
