/**
 * What a photo may be, with sources: {@code models/photo/limits.json}.
 *
 * <p>In: the data file. Out: figures. May use: {@code photo.jpeg}, {@code data}.
 */
package leadlight.photo.limit;
