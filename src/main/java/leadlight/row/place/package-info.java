/**
 * From a fitted row to its leads: body side, numbering, toes, each lead's own place.
 *
 * <p>In: a {@code RowFit}. Out: {@code Lead}s. May use: {@code model}, {@code model.picture},
 * {@code model.remark}, {@code model.row}, {@code numeric}, {@code row.find}, {@code row.strip},
 * {@code row.tuning}, {@code vision}.
 */
package leadlight.row.place;
