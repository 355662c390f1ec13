/**
 * Arithmetic that several houses need, each piece once: quantiles, the logistic function, the top
 * of a parabola, values between grid points, robust least squares. Written here where no library on
 * the class path has it with the same rounding.
 *
 * <p>In: numbers. Out: numbers. May use: the JDK alone.
 */
package leadlight.numeric;
