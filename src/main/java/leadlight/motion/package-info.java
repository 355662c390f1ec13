/**
 * The nudge: which lead a pick touches in a photo, and how far that lead's foot moves against its
 * own land.
 *
 * <p>In: a photo at rest with its row, and photos while leads are pushed. Out: a {@code Nudge}. May
 * use: {@code model}, {@code data}, {@code vision}, {@code register}.
 */
package leadlight.motion;
