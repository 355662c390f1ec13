package leadlight.model;

import java.util.Optional;

/**
 * What the user asked for; travels with the result.
 *
 * @param row the row that was looked for
 * @param productClass 1, 2 or 3
 * @param acceptanceSet id of the limits file
 * @param hint where a person pointed at the row, if anybody did
 */
public record Settings(
    RowSpec row, int productClass, String acceptanceSet, Optional<RowHint> hint) {

  /** Refuses a class other than 1, 2 and 3. */
  public Settings {
    Checks.within("productClass", productClass, 1, 3);
  }
}
