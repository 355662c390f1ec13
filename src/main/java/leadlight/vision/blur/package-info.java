/**
 * How soft, noisy and light a picture is.
 *
 * <p>In: frames. Out: numbers. May use: {@code vision}.
 */
package leadlight.vision.blur;
