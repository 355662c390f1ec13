/**
 * Picture bytes to frames, here or in a process apart.
 *
 * <p>In: bytes. Out: {@code Frame}s. May use: {@code vision}, {@code vision.load}.
 */
package leadlight.vision.decode;
