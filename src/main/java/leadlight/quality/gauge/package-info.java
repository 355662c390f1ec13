/**
 * What a gauge study says of its components when readings are missing, and how surely; bias and
 * linearity.
 *
 * <p>In: readings of parts by operators. Out: standard deviations with intervals, or the words that
 * stand in their place. May use what {@code quality} may, and Hipparchus' optimisers.
 */
package leadlight.quality.gauge;
