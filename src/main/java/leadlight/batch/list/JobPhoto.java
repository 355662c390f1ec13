package leadlight.batch.list;

import java.nio.file.Path;
import java.util.Optional;
import leadlight.model.BoardSide;
import leadlight.model.BodySide;
import leadlight.model.row.RowSpec;
import leadlight.record.scoring.Subject;

/**
 * A photo and what is to be done with it.
 *
 * @param photo where it lies
 * @param subject what it is of
 * @param row the row to look for
 * @param body where the body lies in the photo, if it was said
 * @param productClass 1, 2 or 3
 * @param legs the side of the board, if the photo shows the connector's anchor legs and no row
 */
public record JobPhoto(
    Path photo,
    Subject subject,
    RowSpec row,
    Optional<BodySide> body,
    int productClass,
    Optional<BoardSide> legs) {

  /** Of a photo of a row. */
  public JobPhoto(
      Path photo, Subject subject, RowSpec row, Optional<BodySide> body, int productClass) {
    this(photo, subject, row, body, productClass, Optional.empty());
  }
}
