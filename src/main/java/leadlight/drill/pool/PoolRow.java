package leadlight.drill.pool;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import leadlight.model.row.RowOutcome;

/**
 * A photo whose joints a set may take.
 *
 * @param photo where it lies
 * @param lamp kind of light, if known
 * @param pitchMm the row's pitch
 * @param place where the row is
 * @param toldBefore what the tool said when the record was made, pin 1 first; empty if it is to be
 *     asked now
 */
public record PoolRow(
    Path photo,
    Optional<String> lamp,
    double pitchMm,
    RowOutcome.Found place,
    List<ToolSaid> toldBefore) {

  /** Copies the list. */
  public PoolRow {
    toldBefore = List.copyOf(toldBefore);
  }

  public String file() {
    return String.valueOf(photo.getFileName());
  }
}
