/**
 * Where in the photo a row may be: combs over directions and scales, fitted, its ends chosen.
 *
 * <p>In: a frame and a {@code RowSpec}. Out: {@code RowFit}s. May use: {@code model}, {@code
 * model.picture}, {@code model.row}, {@code numeric}, {@code row.strip}, {@code row.tuning}, {@code
 * vision}.
 */
package leadlight.row.find;
