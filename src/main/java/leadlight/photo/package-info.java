/**
 * A file becomes a photo: decode, metadata, hash, limits before memory is taken, and what its
 * fitness is.
 *
 * <p>In: a path. Out: an upright frame with its {@code PhotoInfo}, or a {@code UserError}. May use:
 * {@code model}, {@code data}, {@code vision}, nothing else.
 */
package leadlight.photo;
