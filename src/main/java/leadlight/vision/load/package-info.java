/**
 * Loads OpenCV's native library once per machine and user.
 *
 * <p>In: a platform. Out: a loaded library. May use: {@code model}.
 */
package leadlight.vision.load;
