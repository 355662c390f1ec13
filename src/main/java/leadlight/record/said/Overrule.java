package leadlight.record.said;

import java.time.ZonedDateTime;
import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.model.Verdict;

/**
 * A person's opinion of a joint, kept beside the tool's.
 *
 * @param verdict what the person says
 * @param finding what the person sees, if a defect or process indicator
 * @param reason why
 * @param person who
 * @param at when
 */
public record Overrule(
    Verdict verdict,
    Optional<FindingKind> finding,
    String reason,
    String person,
    ZonedDateTime at) {

  /** Refuses an opinion without reason or name, and "unjudged". */
  public Overrule {
    if (reason.isBlank() || person.isBlank()) {
      throw new IllegalArgumentException("an overrule needs a reason and a name");
    }
    if (verdict == Verdict.UNJUDGED) {
      throw new IllegalArgumentException("a person who overrules must judge");
    }
  }
}
