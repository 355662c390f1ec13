/**
 * Pieces of pictures as numbers, and where they lie.
 *
 * <p>In: numbers. Out: immutable values. May use: {@code model}.
 */
package leadlight.model.picture;
