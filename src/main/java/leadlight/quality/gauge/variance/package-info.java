/**
 * How much of a gauge's spread is equipment, operator and part: by ranges, by analysis of variance,
 * by restricted likelihood.
 *
 * <p>In: readings. Out: components with intervals. May use: {@code quality}, {@code data}, {@code
 * model}.
 */
package leadlight.quality.gauge.variance;
