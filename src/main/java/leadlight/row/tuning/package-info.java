/**
 * Figures of the search for rows, with their sources: {@code models/row/search.json}.
 *
 * <p>In: the data file. Out: figures. May use: {@code row.strip}, {@code data}.
 */
package leadlight.row.tuning;
