package leadlight.row;

import java.util.List;
import java.util.Optional;
import leadlight.model.RowHint;
import leadlight.model.RowOutcome;
import leadlight.model.RowSpec;
import leadlight.vision.Frame;

/** Placeholder until row finding is built: finds nothing, and says so. */
public final class RowFinder {

  /** Finds nothing. */
  public RowOutcome find(Frame frame, RowSpec spec, Optional<RowHint> hint) {
    return new RowOutcome.NotFound("row finding is not built yet", List.of());
  }
}
