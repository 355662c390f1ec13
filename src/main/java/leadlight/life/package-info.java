/**
 * A job from photo to hand-back: a photo scored straight into the record, results brought up to
 * date when people or the bench said something, what of a board is still open.
 *
 * <p>In: photos, the record. Out: the record, result files, how a board stands. May use: {@code
 * model}, {@code data}, {@code vision}, {@code photo}, {@code connector}, {@code pipeline}, {@code
 * grade}, {@code enrol}, {@code report}, {@code record}, {@code text}.
 */
package leadlight.life;
