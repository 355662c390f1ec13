package leadlight.model.result;

import java.util.Optional;
import leadlight.model.Checks;
import leadlight.model.Opinions;
import leadlight.model.row.RowHint;
import leadlight.model.row.RowSpec;

/**
 * What the user asked for; travels with the result.
 *
 * @param row the row that was looked for
 * @param productClass 1, 2 or 3
 * @param acceptanceSet id of the limits file
 * @param hint where a person pointed at the row, if anybody did
 * @param opinions whose opinion decides
 */
public record Settings(
    RowSpec row,
    int productClass,
    String acceptanceSet,
    Optional<RowHint> hint,
    Opinions opinions) {

  /** Refuses a class other than 1, 2 and 3. Records from before the reader name no opinions. */
  public Settings {
    opinions = opinions == null ? Opinions.MEASURES : opinions;
    Checks.within("productClass", productClass, 1, 3);
  }

  /** Both opinions, as usual. */
  public Settings(RowSpec row, int productClass, String acceptanceSet, Optional<RowHint> hint) {
    this(row, productClass, acceptanceSet, hint, Opinions.BOTH);
  }
}
