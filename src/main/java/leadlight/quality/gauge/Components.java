package leadlight.quality.gauge;

import java.util.Optional;
import leadlight.quality.Spread;

/**
 * The components of one measure, whatever is missing.
 *
 * @param cells all readings
 * @param spread standard deviations by restricted maximum likelihood
 * @param sureness for their intervals; empty if a cell is empty
 */
public record Components(Cells cells, Spread spread, Optional<Sureness> sureness) {

  /** Computes them; the cells must be connected. */
  public static Components of(Cells cells) {
    return new Components(cells, Reml.of(cells), Sureness.of(cells));
  }
}
