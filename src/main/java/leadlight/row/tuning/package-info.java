/**
 * Figures of the search for rows, with their sources: {@code models/row/search.json}.
 *
 * <p>In: the data file. Out: figures. May use: {@code data}, {@code numeric}.
 */
package leadlight.row.tuning;
