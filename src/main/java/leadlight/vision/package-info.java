/**
 * The only package that knows OpenCV: decoding, straightening, matching, filtering.
 *
 * <p>In: bytes, {@link leadlight.vision.Frame}s and model values. Out: frames, {@link
 * leadlight.model.picture.Plane}s and model values. A native image never crosses the border; each
 * {@code Frame} owns one and releases it on close; temporaries live in a scope. May use: {@code
 * model}, OpenCV.
 */
package leadlight.vision;
