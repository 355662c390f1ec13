package leadlight.page;

import java.util.Optional;

/**
 * What a person says for the customer's sheet.
 *
 * @param job the job, if told
 * @param board the board, if told
 * @param signedBy who looked and signs; nobody if empty
 */
public record SheetRequest(
    Optional<String> job, Optional<String> board, Optional<String> signedBy) {}
