/**
 * What a decision by a measured value risks, for the joint and for the lot.
 *
 * <p>In: the spread of the process, the uncertainty of a reading, limits. Out: probabilities. May
 * use what {@code quality} may, and Hipparchus' quadrature.
 */
package leadlight.quality.risk;
