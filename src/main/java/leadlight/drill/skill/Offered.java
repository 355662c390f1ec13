package leadlight.drill.skill;

import java.util.List;
import leadlight.model.FindingKind;

/**
 * The faults that a trainee chooses from; the same for every specimen, so that none is hinted at.
 */
public final class Offered {

  /** By their keys 1, 2, ...; the key after the last is "something else". */
  public static final List<FindingKind> KINDS =
      List.of(
          FindingKind.BRIDGE,
          FindingKind.OPEN,
          FindingKind.INSUFFICIENT,
          FindingKind.EXCESS,
          FindingKind.MISSING_LEAD,
          FindingKind.SIDE_OVERHANG,
          FindingKind.TOE_OVERHANG,
          FindingKind.VOID);

  /** What stands for a fault without a key of its own. */
  public static final String OTHER = "other";

  private Offered() {}
}
