/**
 * A row: as asked for, as hinted at, as found, with its leads.
 *
 * <p>In: numbers. Out: immutable values. May use: {@code model}, {@code model.remark}.
 */
package leadlight.model.row;
