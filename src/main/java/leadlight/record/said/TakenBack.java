package leadlight.record.said;

import java.time.ZonedDateTime;
import java.util.Optional;

/**
 * Something said of a joint that was taken back; it counts no more and is kept.
 *
 * @param opinion the person's opinion, if it was one
 * @param bench the bench result, if it was one
 * @param reason why it was taken back; may be empty
 * @param person who took it back
 * @param at when
 */
public record TakenBack(
    Optional<Overrule> opinion,
    Optional<BenchResult> bench,
    String reason,
    String person,
    ZonedDateTime at) {}
