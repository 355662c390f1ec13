/**
 * Lays one photo of a row over another: camera shift, turn, scale, perspective, exposure and focus
 * removed, so that the same place of the board is the same pixel in both.
 *
 * <p>In: frames and a row found in one of them. Out: an {@code Overlay}, or nothing where the two
 * do not show the same row. May use: {@code model}, {@code data}, {@code vision}.
 */
package leadlight.register;
