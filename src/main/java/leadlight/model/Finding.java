package leadlight.model;

import java.util.List;

/**
 * A finding at a joint.
 *
 * @param kind what
 * @param pins the pins that it concerns, this one first
 * @param verdict what it means in the chosen class
 * @param probability how sure, 0 to 1
 * @param evidence the numbers behind it, in words
 * @param clause the standard's clause that it rests on, with source and provenance
 * @param settleBy how to settle it at the bench; empty if nothing is to be settled
 */
public record Finding(
    FindingKind kind,
    List<Integer> pins,
    Verdict verdict,
    double probability,
    String evidence,
    String clause,
    String settleBy) {

  /** Copies the list. */
  public Finding {
    pins = List.copyOf(pins);
    Checks.within("probability", probability, 0, 1);
  }
}
