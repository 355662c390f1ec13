package leadlight.summary;

import java.util.List;
import leadlight.text.Messages;

/**
 * One row of a board at two stages.
 *
 * @param before the photo before
 * @param after the photo after
 * @param changes one a pin, pin 1 first; empty if one of the photos shows no row
 * @param picture name of the file that shows both
 */
public record BeforeAfter(
    PhotoLine before, PhotoLine after, List<PinChange> changes, String picture) {

  /** Copies the list. */
  public BeforeAfter {
    changes = List.copyOf(changes);
  }

  /** Changes worth telling, with pins of one kind of change together: "2, 5: open → acceptable". */
  public List<String> words(Messages words) {
    return ChangeWords.of(changes, words);
  }
}
