package leadlight.quality.sampling;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import leadlight.model.UserError;

/**
 * A random draw that can be repeated: {@link Collections#shuffle} by {@link Random}, whose sequence
 * its documentation fixes.
 */
public final class Draw {

  private Draw() {}

  /**
   * So many of a list, in random order, so that the order tells nothing either.
   *
   * @throws UserError if there are not so many
   */
  public static <T> List<T> of(List<T> lot, int size, long seed) {
    if (size > lot.size()) {
      throw new UserError(
          "a sample of %d cannot be drawn from %d; look at all of them or name the whole lot"
              .formatted(size, lot.size()));
    }
    List<T> shuffled = new ArrayList<>(lot);
    Collections.shuffle(shuffled, new Random(seed));
    return List.copyOf(shuffled.subList(0, size));
  }
}
