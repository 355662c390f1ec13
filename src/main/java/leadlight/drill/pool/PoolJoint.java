package leadlight.drill.pool;

import java.util.Optional;
import leadlight.model.FindingKind;
import leadlight.trial.truth.TrueClass;

/**
 * A joint of which the truth is known, that a set may take.
 *
 * @param row the photo that it is in
 * @param pin place in the row, from 1
 * @param known the truth
 * @param borderline near a limit, or people and tool differed on it
 */
public record PoolJoint(PoolRow row, int pin, Known known, boolean borderline) {

  /** "board.jpg pin 3", as everywhere where joints are graded. */
  public String item() {
    return row.file() + " pin " + pin;
  }

  /** What it is drawn for; empty if nothing is wrong. */
  public Optional<FindingKind> finding() {
    return known.verdict() == TrueClass.DEFECT
        ? known.findings().stream().findFirst()
        : Optional.empty();
  }
}
