/**
 * Rendered scenes with exact truth, from physics.
 *
 * <p>In: a scene description. Out: a picture and its truth file. May use: {@code model}, {@code
 * connector}, Jackson.
 */
package leadlight.scene;
