package leadlight.page;

import java.util.List;
import java.util.Optional;
import leadlight.record.said.LegsSeen;

/**
 * What the record says of the board, for the customer's sheet.
 *
 * @param job the job
 * @param board the board
 * @param serial the board's serial number, if noted
 * @param shop the workshop, if told
 * @param looked how each joint was looked at, in the words of the person who confirmed it; empty if
 *     nobody did
 * @param lookedBy who confirmed it
 * @param legs what was seen of the anchor legs, a photo each; empty if nobody looked
 * @param decision whether the board is handed back; empty if nobody decided
 * @param because what the decision rests on; may be empty
 * @param signedBy who decided; nobody if empty
 * @param seal of the record that all this stands in
 * @param date day of the decision, or of the last photo, as 2026-11-28
 */
public record SheetRequest(
    String job,
    String board,
    Optional<String> serial,
    Optional<String> shop,
    Optional<String> looked,
    Optional<String> lookedBy,
    List<LegsSeen> legs,
    Optional<Boolean> decision,
    String because,
    Optional<String> signedBy,
    String seal,
    String date) {}
