/**
 * Joins what other photos and the pick showed into what one photo showed.
 *
 * <p>In: a scored photo, and what was seen besides. Out: a scored photo with its verdicts anew. May
 * use: {@code model}, {@code data}, {@code vision}, {@code register}, {@code grade}.
 */
package leadlight.together;
