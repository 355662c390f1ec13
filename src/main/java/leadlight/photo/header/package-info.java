/**
 * What a picture file says of itself, read without decoding: markers, chunks, directories, Exif.
 *
 * <p>In: bytes. Out: {@code Header}s. May use: {@code photo.limit}, {@code model}, {@code
 * model.remark}, {@code vision.decode}.
 */
package leadlight.photo.header;
