/**
 * Sampling plans beyond the single plan of a series of lots: isolated lots, double and sequential
 * plans, what rectifying lets out.
 *
 * <p>In: qualities and risks. Out: plans with their curves. May use what {@code quality} may.
 */
package leadlight.quality.sampling;
