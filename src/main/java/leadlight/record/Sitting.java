package leadlight.record;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * One trainee at one set, once; or at a row of their own.
 *
 * @param id its number; a later sitting has a higher one, whatever the clock says
 * @param person the name that the trainee chose
 * @param set what was taken
 * @param startedAt when it began, with the zone
 * @param endedAt when the last specimen was told; empty if it can be gone on with
 */
public record Sitting(
    long id, String person, SetId set, ZonedDateTime startedAt, Optional<ZonedDateTime> endedAt) {

  /**
   * A set, as far as the record knows it.
   *
   * @param key SHA-256 that tells sets apart, lower-case hex
   * @param name for people
   * @param specimens how many
   * @param ownWork true for a row of the trainee's own, of which no truth is known
   */
  public record SetId(String key, String name, int specimens, boolean ownWork) {}
}
