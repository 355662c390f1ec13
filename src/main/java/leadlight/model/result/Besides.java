package leadlight.model.result;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import leadlight.model.remark.Note;

/**
 * What other photos of the same row had to do with a result.
 *
 * @param photos the other photos, in the order given
 * @param seenIn for each joint, pin 1 first, the files that show it; empty if nothing was joined
 * @param changes for each joint what changed since it was set down; empty if that was not asked
 * @param legs the connector's anchor legs in photos of their own, if any were given
 */
public record Besides(
    List<Other> photos, List<List<String>> seenIn, List<Change> changes, Optional<LegSet> legs) {

  /** Copies the lists. */
  public Besides {
    photos = List.copyOf(photos);
    seenIn = List.copyOf(seenIn);
    changes = List.copyOf(changes);
  }

  /** Photos of the row alone. */
  public Besides(List<Other> photos, List<List<String>> seenIn, List<Change> changes) {
    this(photos, seenIn, changes, Optional.empty());
  }

  /** Photos of anchor legs alone. */
  public static Besides of(LegSet legs) {
    return new Besides(List.of(), List.of(), List.of(), Optional.of(legs));
  }

  /** No other photos. */
  public static final Besides NONE = new Besides(List.of(), List.of(), List.of());

  /** What a photo is to the result. */
  public enum Role {
    SAME_ROW,
    PLACED,
    BURST
  }

  /**
   * Another photo.
   *
   * @param file its name
   * @param sha256 hash of its bytes
   * @param role what it is
   * @param refused why nothing was taken from it, if so
   */
  public record Other(String file, String sha256, Role role, Optional<Note> refused) {}

  /**
   * What became of a joint since it was set down.
   *
   * @param soldered chance that solder came; unknown if it could not be compared
   * @param reason why it could not
   */
  public record Change(OptionalDouble soldered, Optional<Note> reason) {}
}
