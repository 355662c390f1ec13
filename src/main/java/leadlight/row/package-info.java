/**
 * From a photo to where the row and each of its leads are.
 *
 * <p>In: a frame and a {@code RowSpec}. Out: a {@code RowOutcome}. May use: {@code model}, {@code
 * data}, {@code vision}.
 */
package leadlight.row;
