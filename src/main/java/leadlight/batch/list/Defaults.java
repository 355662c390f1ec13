package leadlight.batch.list;

import java.util.Optional;
import leadlight.connector.RowRequest;
import leadlight.model.BodySide;

/**
 * What holds for a photo about which nothing is said.
 *
 * @param row the row to look for; may be empty
 * @param body where the body lies in the photos, if it was said
 * @param productClass 1, 2 or 3
 */
public record Defaults(RowRequest row, Optional<BodySide> body, int productClass) {

  /** In words, as "usb-c-16, class 2". */
  public String words() {
    String what =
        row.connector()
            .orElseGet(
                () ->
                    row.isEmpty()
                        ? "rows as stated"
                        : row.leads().orElse(0) + " leads at " + row.pitchMm().orElse(0) + " mm");
    return what
        + (row.row().isPresent() ? " row " + row.row().getAsInt() : "")
        + ", class "
        + productClass
        + body.map(side -> ", body " + side.id()).orElse("");
  }
}
