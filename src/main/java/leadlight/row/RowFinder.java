package leadlight.row;

import java.util.Optional;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;
import leadlight.row.tuning.RowTuning;
import leadlight.vision.Frame;

/**
 * Finds the row of a known number of leads in a photo: any angle, any scale, the body on any side.
 *
 * <p>Coarse: combs of N teeth in reduced pictures, along the directions of their edges, large
 * pitches first. Then each candidate is straightened, its pitch, drift and slope fitted, folded to
 * the row's own lead picture, and the N places chosen whose inside looks like leads and whose
 * outside does not. Then the body's side is judged, which fixes the numbering, and each lead's toe
 * is located. Finer pictures are searched only while no clear row was found. Deterministic.
 */
public final class RowFinder {

  private final RowTuning tuning;

  /** A finder with the built-in tuning. */
  public RowFinder() {
    this.tuning = RowTuning.builtIn();
  }

  /**
   * Looks for the row.
   *
   * @param frame the upright photo
   * @param spec what is known of the row
   * @param hint where a person pointed at the row; the row's middle must lie in or near it
   */
  public RowOutcome find(Frame frame, RowSpec spec, Optional<RowHint> hint) {
    try (RowSearch search = search(frame, spec, hint)) {
      return search.outcome();
    }
  }

  /** The same, for those who may ask for other rows than the one that seems meant. */
  public RowSearch search(Frame frame, RowSpec spec, Optional<RowHint> hint) {
    return new RowSearch(tuning, frame, spec, hint);
  }
}
