/**
 * How a board stands: its photos and its life, and what of it is still open.
 *
 * <p>In: a board's recorded life. Out: {@code BoardStanding}. May use: {@code model}, {@code
 * model.result}, {@code model.row}, {@code record}, {@code record.said}, {@code record.scoring}.
 */
package leadlight.summary.board;
