/**
 * Where the camera stands, and what lens and sensor make of light.
 *
 * <p>In: linear light. Out: a picture. May use: {@code scene.chance}, {@code model}.
 */
package leadlight.scene.camera;
