package leadlight.batch.list;

import java.nio.file.Path;
import java.util.Optional;
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
 */
public record JobPhoto(
    Path photo, Subject subject, RowSpec row, Optional<BodySide> body, int productClass) {}
