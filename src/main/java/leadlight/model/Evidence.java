package leadlight.model;

import java.util.List;

/**
 * How strongly the photo speaks for one kind of finding at one joint.
 *
 * @param kind the finding
 * @param probability calibrated chance that the joint has it, 0 to 1
 * @param neighbourPin the other pin of a bridge; 0 for every other finding
 * @param words the numbers behind it, for people, as "step at the toe 0.42, row's typical 0.10"
 * @param reasons the signals behind the words, loudest first
 */
public record Evidence(
    FindingKind kind, double probability, int neighbourPin, String words, List<Reason> reasons) {

  /** Copies the list; refuses a probability outside 0 to 1. */
  public Evidence {
    reasons = List.copyOf(reasons);
    Checks.within("probability", probability, 0, 1);
    Checks.atLeast("neighbourPin", neighbourPin, 0);
  }

  /** Evidence whose signals were not kept. */
  public Evidence(FindingKind kind, double probability, int neighbourPin, String words) {
    this(kind, probability, neighbourPin, words, List.of());
  }
}
