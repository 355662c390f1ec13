/**
 * Chance-corrected agreement with intervals that count items, or photos, and not single grades.
 *
 * <p>In: what each item was called, how often. Out: coefficients with an interval, or with the
 * words that stand in its place. May use what {@code quality} may.
 */
package leadlight.quality.agreement;
