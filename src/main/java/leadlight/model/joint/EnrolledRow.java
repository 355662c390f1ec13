package leadlight.model.joint;

import java.util.List;
import java.util.Optional;
import leadlight.model.remark.Note;

/**
 * What an enrolled bench says of a row.
 *
 * @param bench its name
 * @param notAs in which respect the photo is not as the bench was enrolled, if so: "scale" ...
 * @param opinions one a joint, pin 1 first; empty if the bench does not judge this photo
 * @param note what is to be said of it in the report
 */
public record EnrolledRow(
    String bench, Optional<String> notAs, List<BenchOpinion> opinions, Note note) {

  /** Copies the list. */
  public EnrolledRow {
    opinions = List.copyOf(opinions);
  }

  /** Whether it judges this photo. */
  public boolean judges() {
    return !opinions.isEmpty();
  }
}
